package rundlauf.usecase;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rundlauf.bench.Bench;
import rundlauf.bench.Setup;
import rundlauf.character.MeasuredCharacter;
import rundlauf.character.SetupCharacter;
import rundlauf.maths.Draws;
import rundlauf.planning.Knowledge;
import rundlauf.quantity.Saying;
import rundlauf.reduce.Reduced;
import rundlauf.report.Outcome;
import rundlauf.safety.Inspection;
import rundlauf.safety.Standing;

/** What the trials of a bench tell of its setups; each trial is reduced once. */
final class BenchKnowledge {
  private final Bench bench;
  private final List<Outcome> outcomes;
  private final List<Reduced> results;
  private final Draws draws;

  private BenchKnowledge(Bench bench, List<Outcome> outcomes, Draws draws) {
    this.bench = bench;
    this.outcomes = outcomes;
    this.results = BenchOutcomes.figures(outcomes);
    this.draws = draws;
  }

  /**
   * What is known.
   *
   * @param outcomes of all trials of the bench, reduced with {@code draws}
   */
  static Knowledge of(Bench bench, List<Outcome> outcomes, Draws draws) {
    var known = new BenchKnowledge(bench, outcomes, draws);
    return new Knowledge(
        known::character, setup -> Standing.of(known.inspections(setup)), known::hold);
  }

  private SetupCharacter character(Knowledge.Put put) {
    SetupCharacter character =
        MeasuredCharacter.of(
            bench, put.setup(), Optional.of(put.cutter()), results, put.stickout(), draws);
    List<Saying> cautions = new ArrayList<>(character.cautions());
    cautions.addAll(BenchOutcomes.refused(ofSpindle(put.setup())));
    return character.withCautions(cautions);
  }

  private List<Outcome> ofSpindle(Setup setup) {
    return outcomes.stream().filter(o -> isOf(o.setup(), setup.spindle())).toList();
  }

  private List<Saying> hold(Setup setup) {
    List<Inspection> inspections = inspections(setup);
    return Standing.of(inspections) == Standing.HELD
        ? Standing.last(inspections).because()
        : List.of();
  }

  private List<Inspection> inspections(Setup setup) {
    return results.stream()
        .filter(Inspection.class::isInstance)
        .filter(result -> isOf(result.head().setup(), setup.spindle()))
        .map(Inspection.class::cast)
        .toList();
  }

  private boolean isOf(Optional<String> setup, String spindle) {
    return setup.flatMap(bench::setup).filter(s -> s.spindle().equals(spindle)).isPresent();
  }
}
