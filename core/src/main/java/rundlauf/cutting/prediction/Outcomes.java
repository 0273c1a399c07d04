package rundlauf.cutting.prediction;

import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import rundlauf.cutting.deflection.Bending;
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
    Bending bending = new Bending();
    return new Outcomes(
        of(central, state -> CutOutcome.fine(state, feedback)),
        of(central, state -> CutOutcome.coarse(state, feedback, bending)),
        of(drawn, state -> CutOutcome.coarse(state, feedback, bending)));
  }

  private static List<CutOutcome> of(
      List<CutState> states, Function<CutState, CutOutcome> outcome) {
    return states.stream().map(outcome).toList();
  }

  Figure figure(Unit unit, ToDoubleFunction<CutOutcome> of, Spread spread) {
    return figure(unit, List.of(of), of, spread);
  }

  /**
   * A figure whose centre is that of several values.
   *
   * @param central what the centre is taken over
   * @param of the drawn values
   */
  Figure figure(
      Unit unit,
      List<ToDoubleFunction<CutOutcome>> central,
      ToDoubleFunction<CutOutcome> of,
      Spread spread) {
    return spread.figure(unit, all(fine, central), all(coarse, central), values(drawn, of));
  }

  private static double[] all(
      List<CutOutcome> outcomes, List<ToDoubleFunction<CutOutcome>> several) {
    return several.stream().flatMapToDouble(of -> outcomes.stream().mapToDouble(of)).toArray();
  }

  /** By how much fine steps move a value. */
  double shift(ToDoubleFunction<CutOutcome> of) {
    return Spread.median(values(fine, of)) - Spread.median(values(coarse, of));
  }

  static double[] values(List<CutOutcome> outcomes, ToDoubleFunction<CutOutcome> of) {
    return outcomes.stream().mapToDouble(of).toArray();
  }
}
