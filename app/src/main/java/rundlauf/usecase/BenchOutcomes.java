package rundlauf.usecase;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rundlauf.bench.Bench;
import rundlauf.bench.Entry;
import rundlauf.bench.Trial;
import rundlauf.compare.Comparing;
import rundlauf.compare.SetupResults;
import rundlauf.maths.Draws;
import rundlauf.maths.Work;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Refused;
import rundlauf.quantity.Saying;
import rundlauf.reduce.Reduced;
import rundlauf.report.BenchResults;
import rundlauf.report.Outcome;

/** Every trial of a bench reduced; a refused one keeps its refusal and stops no other. */
final class BenchOutcomes {
  private BenchOutcomes() {}

  static BenchResults of(Bench bench, Draws draws, Work work) {
    return compared(bench, reduced(bench, draws, work), draws);
  }

  /** Of trials that were reduced already, with these draws. */
  static BenchResults compared(Bench bench, List<Outcome> outcomes, Draws draws) {
    List<SetupResults> setups =
        bench.setups().stream()
            .map(setup -> SetupResults.latest(setup.name(), ofSetup(setup.name(), outcomes)))
            .toList();
    return new BenchResults(bench, outcomes, Comparing.compare(setups, draws));
  }

  /** Those of all trials. */
  static List<Outcome> reduced(Bench bench, Draws draws, Work work) {
    return work.map(bench.trials(), trial -> outcome(trial, bench, draws, work));
  }

  /** The results of those that could be reduced. */
  static List<Reduced> figures(List<Outcome> outcomes) {
    return outcomes.stream()
        .flatMap(o -> o instanceof Outcome.Figures f ? Stream.of(f.reduced()) : Stream.empty())
        .toList();
  }

  /** A caution for each trial that was refused. */
  static List<Saying> refused(List<Outcome> outcomes) {
    return outcomes.stream()
        .filter(Outcome.Unusable.class::isInstance)
        .map(outcome -> outcome.trial().file())
        .map(file -> Saying.of("trial-refused", file, Arg.of(file)))
        .toList();
  }

  private static List<Reduced> ofSetup(String setup, List<Outcome> outcomes) {
    return figures(outcomes.stream().filter(o -> o.setup().equals(Optional.of(setup))).toList());
  }

  /** Those of the trials that were taken on any setup of one spindle. */
  static List<Outcome> ofSpindle(Bench bench, String spindle, Draws draws, Work work) {
    List<Trial> trials =
        bench.trials().stream()
            .filter(
                trial ->
                    setup(trial)
                        .flatMap(bench::setup)
                        .filter(setup -> setup.spindle().equals(spindle))
                        .isPresent())
            .toList();
    return work.map(trials, trial -> outcome(trial, bench, draws, work));
  }

  static Outcome outcome(Trial trial, Bench bench, Draws draws, Work work) {
    try {
      return new Outcome.Figures(trial, Reduction.of(trial, Optional.of(bench), draws, work));
    } catch (Refused refused) {
      return new Outcome.Unusable(trial, setup(trial), refused);
    }
  }

  /** The setup that a trial names, as typed. */
  private static Optional<String> setup(Trial trial) {
    return trial.document().get("setup").orElse(null) instanceof Entry.Scalar s
        ? Optional.of(s.text().strip())
        : Optional.empty();
  }
}
