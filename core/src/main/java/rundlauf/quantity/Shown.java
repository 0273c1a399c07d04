package rundlauf.quantity;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A known figure as it is shown: in the unit it is printed in, an angle brought into the first turn
 * with its interval carried along, so that low ≤ value ≤ high without a jump at 360°.
 *
 * @param value best value, in {@code unit}; an angle in [0, 360)
 * @param u standard uncertainty, in {@code unit}
 * @param low lower end of the coverage interval
 * @param high upper end of it
 * @param level the probability with which the interval holds the value
 * @param dof effective degrees of freedom, where they are had
 */
public record Shown(
    double value, double u, double low, double high, double level, OptionalDouble dof, Unit unit) {

  /** The figure in its own unit; empty when it is missing. */
  public static Optional<Shown> of(Figure figure) {
    return of(figure, figure.unit());
  }

  /** The figure in another unit of the same dimension; empty when it is missing. */
  public static Optional<Shown> of(Figure figure, Unit unit) {
    if (unit.dimension() != figure.unit().dimension()) {
      throw new IllegalArgumentException(figure.unit() + " cannot be shown in " + unit);
    }
    return figure.estimate().map(e -> of(e, unit));
  }

  private static Shown of(Figure.Estimate e, Unit unit) {
    double shift = unit.dimension() == Dimension.ANGLE ? -turns(unit.fromSi(e.value()), unit) : 0;
    return new Shown(
        unit.fromSi(e.value()) + shift,
        unit.fromSi(e.u()),
        unit.fromSi(e.interval().low()) + shift,
        unit.fromSi(e.interval().high()) + shift,
        e.interval().level(),
        e.dof(),
        unit);
  }

  /** The same figure of the opposite sign; not for angles. */
  public Shown negated() {
    return new Shown(-value, u, -high, -low, level, dof, unit);
  }

  /** The whole turns in an angle; all of it where the rest would round up to a full turn. */
  private static double turns(double angle, Unit unit) {
    double turn = unit.fromSi(2 * Math.PI);
    double whole = Math.floor(angle / turn) * turn;
    return angle - whole >= turn ? angle : whole;
  }
}
