package rundlauf.cutting.chip;

import java.util.function.DoubleUnaryOperator;

/** The largest value along the depth of cut of something that changes slowly with height. */
final class HeightPeak {
  /**
   * Turn of the edge between the heights first tried [rad]: our choice; then it is closed in on.
   */
  private static final double STEP = 0.1;

  private static final int FEWEST = 4;
  private static final int CLOSINGS = 30;
  private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

  private HeightPeak() {}

  /**
   * Tries even heights, then closes in on the best by golden section: exact where the value has one
   * hump between three heights next to each other.
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
    return Math.max(most, closeIn(low, high, value));
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
