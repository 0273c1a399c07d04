package rundlauf.readings;

import java.util.Optional;
import rundlauf.bench.Table;
import rundlauf.quantity.Refused;

/** How the rows of a trial tell which way the nose was pushed, how hard, and how the dial stood. */
interface Pushing {
  /**
   * The push of a row: load [N, 0 or more], direction [rad].
   *
   * @throws Refused for a load without direction among others that have one
   */
  Push push(Table.Row row);

  /** The direction that a row says of its push; empty when it says none [rad]. */
  Optional<Double> said(Table.Row row);

  /** The direction that the dial reads along; empty when the row does not say [rad]. */
  Optional<Double> dial(Table.Row row);

  /** A force and its direction. */
  record Push(double load, double direction) {}
}
