package rundlauf.character;

import java.util.LinkedHashMap;
import java.util.Map;
import rundlauf.maths.Draws;
import rundlauf.maths.Samples;
import rundlauf.quantity.Cause;
import rundlauf.quantity.Drawn;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;

/** Angles that nobody knows: anywhere in the turn. */
final class FirstTooth {
  private static final double TURN = 2 * Math.PI;

  /**
   * Step of a sequence whose first n members lie evenly in [0, 1), whatever n is: the fractional
   * part of the golden ratio (Weyl's sequence of least discrepancy; from memory).
   */
  private static final double STEP = (Math.sqrt(5) - 1) / 2;

  private FirstTooth() {}

  /** Where tooth 1 stands to the high spot, when nobody looked. */
  static Trait anywhere(String setup, Draws draws) {
    return Trait.assumed(
        anywhere(Cause.rectangular("setup/" + setup, "first-tooth"), draws),
        Saying.of("first-tooth-anywhere", "first-tooth"));
  }

  /**
   * An angle anywhere in the turn.
   *
   * @param cause of its doubt: the place in its stream begins the sequence
   * @return draws [rad] from 0 to 2π, so evenly spread that a hundred of them stand for the turn
   */
  static Drawn anywhere(Cause cause, Draws draws) {
    double start = draws.stream(cause.id()).uniform();
    Map<Cause, Double> effects = new LinkedHashMap<>();
    effects.put(cause, TURN / Math.sqrt(12));
    Samples angles = Samples.generate(draws.count(), i -> TURN * fraction(start + i * STEP));
    return Drawn.of(Unit.DEGREE, angles, effects);
  }

  private static double fraction(double x) {
    return x - Math.floor(x);
  }
}
