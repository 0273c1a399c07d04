package rundlauf.web;

import io.javalin.http.Context;
import java.util.List;
import rundlauf.render.Wording;
import rundlauf.usecase.Shelf;
import rundlauf.usecase.StoredBench;

/** Where the links of a trial's pieces lead. */
final class TrialLinks {
  /** What the addresses of a trial's pages begin with. */
  static final String TRIAL = "/bench/{bench}/trial/{trial}";

  private TrialLinks() {}

  /** The trial that an address names by its numbers. */
  static Shelf.Placed placed(Shelf shelf, Context ctx) {
    return shelf.trial(Frame.bench(ctx), Frame.number(ctx, "trial"));
  }

  static String base(Shelf.Placed placed) {
    return base(placed.bench(), placed.trial());
  }

  static String base(int bench, int trial) {
    return BenchLinks.base(bench) + "/trial/" + trial;
  }

  /** Words whose links lead to the pages of this trial, which is number 1 of its own report. */
  static Wording words(Shelf shelf, Shelf.Placed placed) {
    List<String> only = List.of(StoredBench.path(placed.name().trial()));
    return new BenchLinks(placed.bench(), only, shelf.trials(placed.bench())).words();
  }
}
