package rundlauf.cutting.prediction;

import java.util.List;
import java.util.function.ToDoubleFunction;
import rundlauf.cutting.force.RigidForces;
import rundlauf.maths.Draws;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Unit;

/**
 * What all states of a cut do.
 *
 * @param fine of the central states, by fine steps
 * @param coarse of the same, by the steps of the draws
 * @param drawn of the drawn states
 */
record Outcomes(List<CutOutcome> fine, List<CutOutcome> coarse, List<CutOutcome> drawn) {
  static Outcomes of(CutAsked cut, HeldStates held, Draws draws, boolean feedback) {
    List<CutState> central = CutStates.central(cut, held.central());
    List<CutState> drawn = CutStates.drawn(cut, held.drawn(), draws);
    return new Outcomes(
        of(central, feedback, RigidForces.ANGLES),
        of(central, feedback, CutOutcome.COARSE),
        of(drawn, feedback, CutOutcome.COARSE));
  }

  private static List<CutOutcome> of(List<CutState> states, boolean feedback, int angles) {
    return states.stream().map(state -> new CutOutcome(state, feedback, angles)).toList();
  }

  Figure figure(Unit unit, ToDoubleFunction<CutOutcome> of, Spread spread) {
    return spread.figure(unit, values(fine, of), values(coarse, of), values(drawn, of));
  }

  /** By how much fine steps move a value. */
  double shift(ToDoubleFunction<CutOutcome> of) {
    return Spread.median(values(fine, of)) - Spread.median(values(coarse, of));
  }

  static double[] values(List<CutOutcome> outcomes, ToDoubleFunction<CutOutcome> of) {
    return outcomes.stream().mapToDouble(of).toArray();
  }
}
