package rundlauf.reduce.sideload;

import java.util.List;
import java.util.Optional;
import rundlauf.quantity.Drawn;
import rundlauf.quantity.Figure;

/**
 * The line of one place, pushed along one axis, with the dial at one angle.
 *
 * @param place the body touched
 * @param at where, from the nut's face [m]
 * @param push the first push's direction [rad]
 * @param dial the direction it was read along [rad]
 * @param load where the load was, from the nut's face, if not at the trial's distance [m]
 * @param compliance travel along the dial over force, over the cosine between push and dial [m/N]
 */
record Slope(
    String place,
    Optional<Double> at,
    double push,
    double dial,
    Optional<Double> load,
    Drawn compliance) {
  private static final List<String> OWN = List.of("scatter", "limit-of-error");

  /** The line's own doubt [m/N]: what all lines of a trial share is not in it. */
  double ownDoubt() {
    double own = 0;
    for (Figure.Share share : compliance.budget()) {
      own += OWN.contains(share.cause().part()) ? share.u() * share.u() : 0;
    }
    return Math.sqrt(own);
  }
}
