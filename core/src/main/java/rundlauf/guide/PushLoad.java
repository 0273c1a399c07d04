package rundlauf.guide;

import java.util.List;
import java.util.stream.Stream;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Format;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.readings.Intended;

/**
 * A load that a plan asks for.
 *
 * @param column that says it: {@code count} or {@code load_N}
 * @param text of its cell
 * @param said as a sentence says it
 * @param none whether it is no load at all
 */
record PushLoad(String column, String text, Arg said, boolean none) {
  private static final String COUNT = "count";

  /** Our choice, because three loads tell bending from play and one does not. */
  private static final List<Integer> COUNTS = List.of(0, 1, 2, 3);

  /** From nothing up, whichever way they were written down. */
  static List<PushLoad> rising(Intended intended) {
    if (!intended.loads().isEmpty()) {
      Stream<Double> forces = intended.loads().stream().map(Quantity::si);
      return rising(forces, 0.0).map(PushLoad::force).toList();
    }
    List<Integer> counts = intended.counts().isEmpty() ? COUNTS : intended.counts();
    return rising(counts.stream(), 0)
        .map(n -> new PushLoad(COUNT, Integer.toString(n), Arg.of(n), n == 0))
        .toList();
  }

  private static <T extends Comparable<T>> Stream<T> rising(Stream<T> loads, T none) {
    return Stream.concat(Stream.of(none), loads).distinct().sorted();
  }

  private static PushLoad force(double newtons) {
    String text = Format.number(Unit.NEWTON.fromSi(newtons));
    return new PushLoad("load_N", text, Arg.of(newtons, Unit.NEWTON), newtons == 0);
  }

  /** How one comes to it from a smaller one. */
  Saying on() {
    return Saying.of(column.equals(COUNT) ? "guide-push-on" : "guide-push-with", "", said);
  }

  /** How one comes back to it from a larger one. */
  Saying off() {
    if (none) {
      return Saying.of("guide-push-off-all", "");
    }
    return Saying.of(column.equals(COUNT) ? "guide-push-off" : "guide-push-back-to", "", said);
  }
}
