package rundlauf.usecase;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rundlauf.bench.Bench;
import rundlauf.bench.Setup;
import rundlauf.bench.Trial;
import rundlauf.maths.Draws;
import rundlauf.maths.Work;
import rundlauf.quantity.Arg;
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
    return Standing.of(inspections(bench, spindle, draws, work)) == Standing.HELD
        ? List.of(Saying.of("spindle-held", spindle, Arg.of(spindle)))
        : List.of();
  }

  private static List<Inspection> inspections(Bench bench, String spindle, Draws draws, Work work) {
    List<Inspection> all = new ArrayList<>();
    for (Trial trial : bench.trials()) {
      if (trial.kind().strip().equals(TrialKind.INSPECTION.word())
          && BenchOutcomes.outcome(trial, bench, draws, work) instanceof Outcome.Figures figures
          && figures.reduced() instanceof Inspection inspection
          && isOf(bench, inspection, spindle)) {
        all.add(inspection);
      }
    }
    return all;
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
