package rundlauf.cutting.force;

import java.util.function.DoubleUnaryOperator;

/** The integral of a function from a start on, kept at even steps and joined by cubics. */
final class RunningIntegral {
  /** Gauss-Legendre, three points on 0 to 1. */
  private static final double[] NODES = {0.5 - Math.sqrt(0.15), 0.5, 0.5 + Math.sqrt(0.15)};

  private static final double[] WEIGHTS = {5.0 / 18, 8.0 / 18, 5.0 / 18};

  private final double from;
  private final double step;
  private final double[] value;
  private final double[] slope;

  /** Over {@code steps} even steps from {@code from} to {@code to}. */
  RunningIntegral(double from, double to, int steps, DoubleUnaryOperator f) {
    this.from = from;
    step = (to - from) / steps;
    value = new double[steps + 1];
    slope = new double[steps + 1];
    slope[0] = f.applyAsDouble(from);
    for (int i = 0; i < steps; i++) {
      double sum = 0;
      for (int q = 0; q < NODES.length; q++) {
        sum += WEIGHTS[q] * f.applyAsDouble(from + (i + NODES[q]) * step);
      }
      value[i + 1] = value[i] + sum * step;
      slope[i + 1] = f.applyAsDouble(from + (i + 1) * step);
    }
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
