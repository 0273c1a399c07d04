package rundlauf.usecase;

import java.util.Optional;
import rundlauf.bench.Bench;
import rundlauf.bench.Entry;
import rundlauf.bench.Trial;
import rundlauf.maths.Draws;
import rundlauf.maths.Work;
import rundlauf.quantity.Refused;
import rundlauf.report.BenchResults;
import rundlauf.report.Outcome;

/** Every trial of a bench reduced; a refused one keeps its refusal and stops no other. */
final class BenchOutcomes {
  private BenchOutcomes() {}

  static BenchResults of(Bench bench, Draws draws, Work work) {
    return new BenchResults(
        bench, work.map(bench.trials(), trial -> outcome(trial, bench, draws, work)));
  }

  private static Outcome outcome(Trial trial, Bench bench, Draws draws, Work work) {
    try {
      return new Outcome.Figures(trial, Reduction.of(trial, Optional.of(bench), draws, work));
    } catch (Refused refused) {
      return new Outcome.Unusable(trial, setup(trial), refused);
    }
  }

  /** The setup that a refused trial names, as typed. */
  private static Optional<String> setup(Trial trial) {
    return trial.document().get("setup").orElse(null) instanceof Entry.Scalar s
        ? Optional.of(s.text().strip())
        : Optional.empty();
  }
}
