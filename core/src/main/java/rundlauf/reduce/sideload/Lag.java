package rundlauf.reduce.sideload;

import java.util.Optional;
import rundlauf.maths.Draws;
import rundlauf.quantity.Drawn;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Interval;
import rundlauf.quantity.Unit;

/** By how much one body travels less than one in front of it, or at least or at most so. */
record Lag(Figure front, Figure behind) {

  /** The difference of the travels [m/N]. */
  Drawn compliance(Draws draws) {
    return Drawn.through(v -> v[0] - v[1], Unit.MICROMETRE_PER_NEWTON, draws, front, behind);
  }

  /**
   * The difference over the whole [1].
   *
   * @param whole travel of the shank [m/N], its interval above 0; draws under half of the lower end
   *     are held there, which moves no end of an interval
   */
  Drawn share(Figure whole, Draws draws) {
    double floor = interval(whole).low() / 2;
    return Drawn.through(
        v -> (v[0] - v[1]) / Math.max(v[2], floor), Unit.ONE, draws, front, behind, whole);
  }

  /**
   * What is known of a quantity that lies between 0 and a limit: draws outside count as the nearer
   * end, and the interval takes an end in wherever it cannot be excluded.
   *
   * @param least no more than the quantity; empty where 0 is all that is known
   * @param top no less than the quantity; the same as {@code least} where it is the quantity
   * @param most the limit
   * @param value to show, where it lies in the interval
   */
  static Drawn known(Optional<Drawn> least, Drawn top, double most, double value, Draws draws) {
    double low = least.map(l -> Math.min(interval(l).low(), most - u(l))).orElse(0.0);
    double high = Math.max(interval(top).high(), least.map(Lag::reaching).orElse(u(top)));
    double first = Math.max(0, low);
    double last = Math.max(first, Math.min(most, high));
    Drawn shown = least.orElse(top);
    return Drawn.of(
        shown.unit(),
        shown.draws(draws).map(x -> Math.max(0, Math.min(most, x))),
        shown.weights(),
        Math.max(first, Math.min(last, value)),
        new Interval(first, last, Interval.LEVEL),
        shown.effects());
  }

  private static double reaching(Drawn least) {
    return Math.max(interval(least).high(), u(least));
  }

  private static Interval interval(Figure figure) {
    return figure.estimate().orElseThrow().interval();
  }

  private static double u(Figure figure) {
    return figure.estimate().orElseThrow().u();
  }
}
