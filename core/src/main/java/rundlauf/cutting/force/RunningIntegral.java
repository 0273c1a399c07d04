package rundlauf.cutting.force;

/** The integral of a function from a start on, kept at even steps and joined by cubics. */
final class RunningIntegral {
  /** Points of Gauss-Legendre in each step, on 0 to 1. */
  private static final double[] NODES = {0.5 - Math.sqrt(0.15), 0.5, 0.5 + Math.sqrt(0.15)};

  private static final double[] WEIGHTS = {5.0 / 18, 8.0 / 18, 5.0 / 18};

  /** Places a step takes in the row of points: its start and the points within. */
  private static final int PLACES = 1 + NODES.length;

  private final double from;
  private final double step;
  private final double[] value;
  private final double[] slope;

  /**
   * From the function's values at {@link #points}.
   *
   * @param f as many values as there are points
   */
  RunningIntegral(double from, double to, int steps, double[] f) {
    this.from = from;
    step = (to - from) / steps;
    value = new double[steps + 1];
    slope = new double[steps + 1];
    for (int i = 0; i < steps; i++) {
      double sum = 0;
      for (int q = 0; q < NODES.length; q++) {
        sum += WEIGHTS[q] * f[PLACES * i + 1 + q];
      }
      value[i + 1] = value[i] + sum * step;
      slope[i] = f[PLACES * i];
    }
    slope[steps] = f[PLACES * steps];
  }

  /** Where the function is to be known for so many steps. */
  static double[] points(double from, double to, int steps) {
    double[] points = new double[PLACES * steps + 1];
    double step = (to - from) / steps;
    for (int i = 0; i < steps; i++) {
      points[PLACES * i] = from + i * step;
      for (int q = 0; q < NODES.length; q++) {
        points[PLACES * i + 1 + q] = from + (i + NODES[q]) * step;
      }
    }
    points[PLACES * steps] = to;
    return points;
  }

  /** The integral from the start to {@code x}, by the cubic with the right slopes at both ends. */
  double at(double x) {
    int i = Math.max(0, Math.min(value.length - 2, (int) ((x - from) / step)));
    double u = (x - from) / step - i;
    double rise = value[i + 1] - value[i];
    double a = step * slope[i] - rise;
    double b = rise - step * slope[i + 1];
    return value[i] + u * rise + u * (1 - u) * (a * (1 - u) + b * u);
  }
}
