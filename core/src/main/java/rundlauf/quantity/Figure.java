package rundlauf.quantity;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rundlauf.maths.Draws;
import rundlauf.maths.Samples;

/**
 * A derived number with its doubt, or the reason why it cannot be had. Values are SI; {@link #unit}
 * is for printing.
 */
public sealed interface Figure permits Measured, Drawn, Missing {
  Unit unit();

  /** Value and interval; empty when the figure is missing. */
  Optional<Estimate> estimate();

  /** Standard uncertainty by cause, largest first; empty when the figure is missing or exact. */
  List<Share> budget();

  /**
   * Best value with its doubt.
   *
   * @param value SI
   * @param u standard uncertainty, SI
   * @param interval 95 % coverage interval, SI; not always symmetric
   * @param dof effective degrees of freedom, where they are had
   */
  record Estimate(double value, double u, Interval interval, OptionalDouble dof) {}

  /** What one cause contributes: its standard uncertainty, SI. */
  record Share(Cause cause, double u) {}

  /** A known figure's draws. */
  interface Drawable {
    /** The figure's values, draw by draw; SI. */
    Samples draws(Draws draws);
  }

  default boolean known() {
    return estimate().isPresent();
  }

  /** The value, SI; asks a figure that is known. */
  default double value() {
    return estimate().orElseThrow().value();
  }
}
