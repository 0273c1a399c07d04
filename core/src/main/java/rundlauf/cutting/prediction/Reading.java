package rundlauf.cutting.prediction;

import java.util.Optional;
import java.util.function.ToDoubleFunction;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;

/**
 * A figure read off an outcome.
 *
 * @param path of the figure in the output
 * @param unit that it is printed in
 * @param touched what it rests on
 * @param missing why it cannot be had; empty when it can
 * @param of the outcome, SI
 */
record Reading(
    String path,
    Unit unit,
    Touched touched,
    Optional<Saying> missing,
    ToDoubleFunction<CutOutcome> of) {
  /** What a figure rests on. */
  enum Touched {
    /** On how it is cut alone. */
    SETTING,
    /** On the forces. */
    FORCE,
    /** On how the setup gives way. */
    BENDING,
    /** On the motor's power. */
    POWER
  }
}
