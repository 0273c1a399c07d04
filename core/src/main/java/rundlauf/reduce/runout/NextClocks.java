package rundlauf.reduce.runout;

import java.util.ArrayList;
import java.util.List;

/**
 * Further clampings that tell the parts apart best: of all choices in quarter turns the one with
 * the least trace of the parts' covariance, {@code tr (XᴴX)⁻¹}.
 */
final class NextClocks {
  /** Half turns first: of equally good choices they are the easiest to set. */
  private static final double[] STEPS = {0, Math.PI, Math.PI / 2, 3 * Math.PI / 2};

  /** Three parts, and one clamping left to judge their scatter by; our choice. */
  private static final int WHOLE = 4;

  private static final int PARTS = 3;

  /** Traces that differ by less are equally good. */
  private static final double SAME = 1e-9;

  private NextClocks() {}

  /**
   * The clampings to add.
   *
   * @param taken how the parts stood so far
   * @return one to three
   */
  static List<Clock> after(PartsDesign taken) {
    int more = PARTS - taken.turns().size();
    int wanted = Math.max(Math.max(1, more), Math.min(PARTS, WHOLE - taken.clocks().size()));
    List<Clock> all = new ArrayList<>();
    for (double collet : STEPS) {
      for (double shank : STEPS) {
        all.add(new Clock(collet, shank));
      }
    }
    return best(taken.clocks(), all, wanted, 0);
  }

  private static List<Clock> best(List<Clock> taken, List<Clock> all, int wanted, int from) {
    List<Clock> best = List.of();
    double least = Double.POSITIVE_INFINITY;
    for (int i = from; i < all.size(); i++) {
      List<Clock> with = new ArrayList<>(taken);
      with.add(all.get(i));
      List<Clock> rest = wanted == 1 ? List.of() : best(with, all, wanted - 1, i);
      with.addAll(rest);
      double trace = trace(with);
      if (trace < least - SAME) {
        least = trace;
        best = new ArrayList<>(List.of(all.get(i)));
        best.addAll(rest);
      }
    }
    return best;
  }

  /**
   * Trace of the inverse of the 3 × 3 normal matrix, whose diagonal is the number of clampings.
   *
   * @return variance of all parts' components over that of a clamping; infinite when they cannot be
   *     told apart
   */
  static double trace(List<Clock> clocks) {
    double n = clocks.size();
    double[] collet = sum(clocks, 1, 0);
    double[] shank = sum(clocks, 0, 1);
    double[] between = sum(clocks, -1, 1);
    double squares = square(collet) + square(shank) + square(between);
    // The product of the three sums around the matrix: c · (s − c) · conj(s).
    double re = collet[0] * between[0] - collet[1] * between[1];
    double im = collet[0] * between[1] + collet[1] * between[0];
    double determinant = n * n * n + 2 * (re * shank[0] + im * shank[1]) - n * squares;
    double minors = 3 * n * n - squares;
    return determinant > SAME * n * n * n ? minors / determinant : Double.POSITIVE_INFINITY;
  }

  private static double[] sum(List<Clock> clocks, int collet, int shank) {
    double[] sum = new double[2];
    for (Clock clock : clocks) {
      double angle = collet * clock.collet() + shank * clock.shank();
      sum[0] += Math.cos(angle);
      sum[1] -= Math.sin(angle);
    }
    return sum;
  }

  private static double square(double[] z) {
    return z[0] * z[0] + z[1] * z[1];
  }
}
