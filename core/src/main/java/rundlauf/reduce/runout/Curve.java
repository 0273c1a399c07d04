package rundlauf.reduce.runout;

import java.util.List;
import rundlauf.maths.Samples;

/**
 * The curve {@code y(θ) = a0 + Σ a_k cos kθ + b_k sin kθ} over a list of orders: its design and its
 * values.
 */
final class Curve {
  /**
   * Points a turn at which a swing is looked for: the highest harmonic fitted is far below half of
   * it.
   */
  private static final int POINTS = 120;

  private Curve() {}

  /** The row of the design at {@code angle} rad: 1, cos and sin of each order. */
  static double[] row(double angle, List<Integer> orders) {
    double[] row = new double[1 + 2 * orders.size()];
    row[0] = 1;
    for (int k = 0; k < orders.size(); k++) {
      row[1 + 2 * k] = Math.cos(orders.get(k) * angle);
      row[2 + 2 * k] = Math.sin(orders.get(k) * angle);
    }
    return row;
  }

  static double[][] rows(Samples angles, List<Integer> orders) {
    double[][] rows = new double[angles.size()][];
    for (int j = 0; j < rows.length; j++) {
      rows[j] = row(angles.get(j), orders);
    }
    return rows;
  }

  /** dy/dθ at {@code angle}, from the coefficients in the order of {@link #row}. */
  static double slope(double angle, List<Integer> orders, Samples coefficients) {
    double sum = 0;
    for (int k = 0; k < orders.size(); k++) {
      int order = orders.get(k);
      sum += order * coefficients.get(2 + 2 * k) * Math.cos(order * angle);
      sum -= order * coefficients.get(1 + 2 * k) * Math.sin(order * angle);
    }
    return sum;
  }

  /** Largest less smallest of the curve over a turn, for every draw of its coefficients. */
  static Samples swings(List<Integer> orders, List<Samples> coefficients) {
    double[][] rows = new double[POINTS][];
    for (int p = 0; p < POINTS; p++) {
      rows[p] = row(2 * Math.PI * p / POINTS, orders);
    }
    return Samples.generate(coefficients.get(0).size(), i -> swing(rows, coefficients, i));
  }

  private static double swing(double[][] rows, List<Samples> coefficients, int draw) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (double[] row : rows) {
      double y = 0;
      for (int c = 1; c < row.length; c++) {
        y += row[c] * coefficients.get(c).get(draw);
      }
      low = Math.min(low, y);
      high = Math.max(high, y);
    }
    return high - low;
  }
}
