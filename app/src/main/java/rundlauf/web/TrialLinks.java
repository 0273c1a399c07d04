package rundlauf.web;

import rundlauf.render.Wording;
import rundlauf.usecase.Shelf;

/** Where the links of a trial's pieces lead. */
final class TrialLinks {
  private TrialLinks() {}

  static String base(Shelf.Placed placed) {
    return "/bench/" + placed.bench() + "/trial/" + placed.trial();
  }

  /** Words whose links lead to the pages of this trial. */
  static Wording words(Shelf.Placed placed) {
    return new Wording(
        id -> id.startsWith("method-") ? "/method/" + id.substring(7) : base(placed));
  }
}
