package rundlauf.reduce.runout;

import java.util.List;
import java.util.OptionalDouble;
import rundlauf.quantity.Arg;
import rundlauf.quantity.DrawnVector;
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
 * @param first how the marks stood in the first clamping
 * @param standings what each part adds then and so set; none where no clocking is known
 */
public record BestClocking(
    OptionalDouble station,
    OptionalDouble collet,
    OptionalDouble shank,
    Figure tir,
    Figure insteadOf,
    Marks first,
    List<Standing> standings) {
  public BestClocking {
    standings = List.copyOf(standings);
  }

  /** Without what a drawing of it needs. */
  public BestClocking(
      OptionalDouble station,
      OptionalDouble collet,
      OptionalDouble shank,
      Figure tir,
      Figure insteadOf) {
    this(
        station,
        collet,
        shank,
        tir,
        insteadOf,
        new Marks(OptionalDouble.empty(), OptionalDouble.empty()),
        List.of());
  }

  /** How far the marks of collet and shank stand forward of the spindle's [rad], where they do. */
  public record Marks(OptionalDouble collet, OptionalDouble shank) {}

  /**
   * What one part adds to E [m].
   *
   * @param part its name; of parts that turn as one all, joined by +
   * @param asClamped with the marks as in the first clamping
   * @param set with the marks set best
   */
  public record Standing(String part, DrawnVector asClamped, DrawnVector set) {}

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
