package rundlauf.usecase;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rundlauf.bench.Bench;
import rundlauf.bench.Setup;
import rundlauf.bench.Trial;
import rundlauf.maths.Draws;
import rundlauf.maths.Work;
import rundlauf.quantity.Saying;
import rundlauf.readings.TrialKind;
import rundlauf.reduce.Reduced;
import rundlauf.report.Outcome;
import rundlauf.safety.Inspection;
import rundlauf.safety.Standing;

/** The caution of a spindle on hold, for every trial that was taken on it. */
final class Hold {
  private Hold() {}

  /** The caution where the bench's inspections hold the spindle; an inspection says so itself. */
  static List<Saying> cautions(Bench bench, Reduced result, Draws draws, Work work) {
    Optional<Setup> setup = result.head().setup().flatMap(bench::setup);
    if (setup.isEmpty() || result instanceof Inspection) {
      return List.of();
    }
    String spindle = setup.get().spindle();
    Standing standing = Standing.of(ofSpindle(bench, spindle, inspections(bench, draws, work)));
    return standing == Standing.HELD ? standing.cautions(spindle) : List.of();
  }

  private static List<Inspection> inspections(Bench bench, Draws draws, Work work) {
    List<Inspection> all = new ArrayList<>();
    for (Trial trial : bench.trials()) {
      if (trial.kind().strip().equals(TrialKind.INSPECTION.word())
          && BenchOutcomes.outcome(trial, bench, draws, work) instanceof Outcome.Figures figures
          && figures.reduced() instanceof Inspection inspection) {
        all.add(inspection);
      }
    }
    return all;
  }

  /** Those that were taken on any setup of one spindle. */
  static List<Inspection> ofSpindle(Bench bench, String spindle, List<Inspection> inspections) {
    return inspections.stream().filter(one -> isOf(bench, one, spindle)).toList();
  }

  private static boolean isOf(Bench bench, Inspection inspection, String spindle) {
    return inspection
        .head()
        .setup()
        .flatMap(bench::setup)
        .filter(setup -> setup.spindle().equals(spindle))
        .isPresent();
  }
}
