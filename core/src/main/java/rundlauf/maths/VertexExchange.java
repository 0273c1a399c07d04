package rundlauf.maths;

import java.util.Optional;

/**
 * The small linear programme of a reference circle: the least h for which {@code h + g_i · v ≥ b_i}
 * for all i. Dual simplex: of the contacts, which bear {@code (1, 0, …)} by weights none negative,
 * the one that the worst point outside unloads first goes out for it.
 */
final class VertexExchange {
  /** Our choice: far more exchanges than were ever needed; circles in cycling ties end here. */
  private static final int MOST = 200;

  private static final double NOTHING = 1e-12;

  private VertexExchange() {}

  /**
   * Solves the programme.
   *
   * @param rows n rows of p numbers, the first 1
   * @param right n numbers
   * @param contacts p of the rows to begin with; afterwards those of the solution
   * @return h and v; nothing where the contacts do not bear it
   */
  static Optional<double[]> solve(double[][] rows, double[] right, int[] contacts) {
    double tolerance = tolerance(right);
    for (int k = 0; k < MOST; k++) {
      double[][] chosen = chosen(rows, contacts);
      double[] there = new double[contacts.length];
      for (int i = 0; i < there.length; i++) {
        there[i] = right[contacts[i]];
      }
      Optional<double[]> vertex = LinearSystem.solve(chosen, there);
      if (vertex.isEmpty()) {
        return vertex;
      }
      int worst = worst(rows, right, vertex.get(), tolerance);
      if (worst < 0) {
        return vertex;
      }
      int out = unloaded(transposed(chosen), rows[worst]);
      if (out < 0) {
        return Optional.empty();
      }
      contacts[out] = worst;
    }
    return Optional.empty();
  }

  /** The weights by which the contacts bear {@code (1, 0, …)}. */
  static Optional<double[]> weights(double[][] rows, int[] contacts) {
    double[] h = new double[contacts.length];
    h[0] = 1;
    return LinearSystem.solve(transposed(chosen(rows, contacts)), h);
  }

  private static double tolerance(double[] right) {
    double largest = 0;
    for (double b : right) {
      largest = Math.max(largest, Math.abs(b));
    }
    return largest * NOTHING;
  }

  /** The row that lies farthest outside; −1 when none does. */
  private static int worst(double[][] rows, double[] right, double[] vertex, double tolerance) {
    int worst = -1;
    double most = tolerance;
    for (int i = 0; i < rows.length; i++) {
      double outside = right[i];
      for (int c = 0; c < vertex.length; c++) {
        outside -= rows[i][c] * vertex[c];
      }
      if (outside > most) {
        most = outside;
        worst = i;
      }
    }
    return worst;
  }

  private static int unloaded(double[][] borne, double[] entering) {
    double[] h = new double[entering.length];
    h[0] = 1;
    Optional<double[]> weights = LinearSystem.solve(borne, h);
    Optional<double[]> shares = LinearSystem.solve(borne, entering);
    int out = -1;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; weights.isPresent() && shares.isPresent() && i < h.length; i++) {
      double share = shares.get()[i];
      if (share > NOTHING && Math.max(0, weights.get()[i]) / share < least) {
        least = Math.max(0, weights.get()[i]) / share;
        out = i;
      }
    }
    return out;
  }

  private static double[][] chosen(double[][] rows, int[] contacts) {
    double[][] chosen = new double[contacts.length][];
    for (int i = 0; i < chosen.length; i++) {
      chosen[i] = rows[contacts[i]];
    }
    return chosen;
  }

  private static double[][] transposed(double[][] square) {
    double[][] turned = new double[square.length][square.length];
    for (int i = 0; i < square.length; i++) {
      for (int j = 0; j < square.length; j++) {
        turned[j][i] = square[i][j];
      }
    }
    return turned;
  }
}
