package rundlauf.web;

import java.util.List;
import rundlauf.render.Wording;
import rundlauf.usecase.Shelf;
import rundlauf.usecase.StoredBench;

/** Where the links of a trial's pieces lead. */
final class TrialLinks {
  private TrialLinks() {}

  static String base(Shelf.Placed placed) {
    return "/bench/" + placed.bench() + "/trial/" + placed.trial();
  }

  /** Words whose links lead to the pages of this trial, which is number 1 of its own report. */
  static Wording words(Shelf shelf, Shelf.Placed placed) {
    List<String> only = List.of(StoredBench.path(placed.name().trial()));
    return new BenchLinks(placed.bench(), only, shelf.trials(placed.bench())).words();
  }
}
