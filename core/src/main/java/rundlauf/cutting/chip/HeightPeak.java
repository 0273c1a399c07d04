package rundlauf.cutting.chip;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/** The largest value along the depth of cut of something that changes slowly with height. */
final class HeightPeak {
  /**
   * Turn of the edge between the heights first tried [rad]: our choice; then it is closed in on.
   */
  private static final double STEP = 0.1;

  private static final int FEWEST = 4;
  private static final int CLOSINGS = 30;

  /**
   * How well a hump must be a parabola, by its range, for its top to be taken: our choice; the top
   * is then off by less than 1e-6 of what makes the hump.
   */
  private static final double SMOOTH = 0.01;

  private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

  private HeightPeak() {}

  /**
   * Tries even heights, then takes the top of the hump at the best: by a parabola where it is
   * smooth, else closing in by golden section. Exact where there is one hump between three heights
   * next to each other.
   *
   * @param height depth of cut [m]; both ends are tried
   * @param turn of the edge by height [rad/m], 0 or more
   * @param value by height above the tip [m]
   * @return its largest value
   */
  static double over(double height, double turn, DoubleUnaryOperator value) {
    int steps = Math.max(FEWEST, (int) Math.ceil(turn * height / STEP));
    int best = 0;
    double most = value.applyAsDouble(0);
    for (int i = 1; i <= steps; i++) {
      double at = value.applyAsDouble(height * i / steps);
      if (at > most) {
        most = at;
        best = i;
      }
    }
    double low = height * Math.max(0, best - 1) / steps;
    double high = height * Math.min(steps, best + 1) / steps;
    OptionalDouble top = top(low, high, value);
    return Math.max(most, top.isPresent() ? top.getAsDouble() : closeIn(low, high, value));
  }

  /**
   * The top, between two heights, of the parabola through both and the middle; empty where the
   * value is no parabola there.
   */
  private static OptionalDouble top(double low, double high, DoubleUnaryOperator value) {
    double half = (high - low) / 2;
    double middle = value.applyAsDouble(low + half);
    double below = value.applyAsDouble(low) - middle;
    double above = value.applyAsDouble(high) - middle;
    double bend = below + above;
    double slope = (above - below) / 2;
    boolean inside = bend < 0 && Math.abs(slope) < -bend;
    double tried = inside ? -slope / bend : 0.5;
    double expected = middle + tried * (slope + tried * bend / 2);
    double found = value.applyAsDouble(low + half * (1 + tried));
    double range = Math.abs(bend) + Math.abs(slope);
    return Math.abs(found - expected) <= SMOOTH * range
        ? OptionalDouble.of(found)
        : OptionalDouble.empty();
  }

  private static double closeIn(double from, double to, DoubleUnaryOperator value) {
    double low = from;
    double high = to;
    double a = high - GOLDEN * (high - low);
    double b = low + GOLDEN * (high - low);
    double atA = value.applyAsDouble(a);
    double atB = value.applyAsDouble(b);
    for (int i = 0; i < CLOSINGS; i++) {
      if (atA >= atB) {
        high = b;
        b = a;
        atB = atA;
        a = high - GOLDEN * (high - low);
        atA = value.applyAsDouble(a);
      } else {
        low = a;
        a = b;
        atA = atB;
        b = low + GOLDEN * (high - low);
        atB = value.applyAsDouble(b);
      }
    }
    return Math.max(atA, atB);
  }
}
