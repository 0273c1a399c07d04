package rundlauf.reduce.runout;

import java.util.OptionalDouble;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;

/**
 * The clock angles that leave least.
 *
 * @param station height it holds at [m]
 * @param collet how far its mark is to stand forward of the spindle's [rad]; empty where it cannot
 *     be said
 * @param shank likewise
 * @param tir what the next clamping so set will be [m]
 * @param insteadOf what the next clamping will be with the parts as in the first [m]
 */
public record BestClocking(
    OptionalDouble station,
    OptionalDouble collet,
    OptionalDouble shank,
    Figure tir,
    Figure insteadOf) {
  /** How to set the marks: of a clocking that is known. */
  public Saying setting() {
    String about = "bestClocking";
    Arg first = Arg.of(collet.orElse(0), Unit.DEGREE);
    Arg second = Arg.of(shank.orElse(0), Unit.DEGREE);
    if (shank.isEmpty()) {
      return Saying.of("set-collet", about, first);
    }
    return collet.isEmpty()
        ? Saying.of("set-shank", about, second)
        : Saying.of("set-collet-and-shank", about, first, second);
  }
}
