package rundlauf.maths;

import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * A linear least-squares fit {@code y ≈ X β}, optionally weighted.
 *
 * @param coefficients the p coefficients β
 * @param unscaled p × p, row by row: (XᵀWX)⁻¹; times the variance of a reading it is the covariance
 *     of β
 * @param rss weighted sum of squared residuals
 * @param dof degrees of freedom, n − p
 * @param residuals the n residuals y − Xβ, unweighted
 */
public record LeastSquares(
    Samples coefficients, Samples unscaled, double rss, int dof, Samples residuals) {
  /** Smallest independent part of a column, over its length; our choice, far above rounding. */
  private static final double SINGULAR = 1e-10;

  /**
   * Solves by QR with Householder reflections.
   *
   * @param rows n rows of p numbers, n ≥ p
   * @param y n numbers
   * @return the fit, all weights 1
   * @throws IllegalArgumentException when the columns are not independent
   */
  public static LeastSquares fit(double[][] rows, Samples y) {
    return fit(rows, y, Samples.generate(y.size(), i -> 1));
  }

  /** As {@link #fit(double[][], Samples)}, each row with a weight over 0 (1 / variance). */
  public static LeastSquares fit(double[][] rows, Samples y, Samples weights) {
    int n = rows.length;
    Samples root = weights.map(Math::sqrt);
    Samples length = columnLengths(rows, root);
    int p = length.size();
    RealMatrix scaled = new Array2DRowRealMatrix(n, p);
    RealVector right = new ArrayRealVector(n);
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < p; j++) {
        scaled.setEntry(i, j, rows[i][j] * root.get(i) / length.get(j));
      }
      right.setEntry(i, y.get(i) * root.get(i));
    }
    try {
      DecompositionSolver solver = new QRDecomposition(scaled, SINGULAR).getSolver();
      RealVector unit = solver.solve(right);
      RealMatrix inverse = solver.getInverse();
      RealMatrix covariance = inverse.multiply(inverse.transpose());
      Samples beta = Samples.generate(p, j -> unit.getEntry(j) / length.get(j));
      Samples residuals = Samples.generate(n, i -> y.get(i) - dot(rows[i], beta));
      double rss = Samples.generate(n, i -> square(root.get(i) * residuals.get(i))).sum();
      Samples unscaled =
          Samples.generate(
              p * p,
              k -> covariance.getEntry(k / p, k % p) / (length.get(k / p) * length.get(k % p)));
      return new LeastSquares(beta, unscaled, rss, n - p, residuals);
    } catch (MathRuntimeException e) {
      throw new IllegalArgumentException("the columns of the fit are not independent", e);
    }
  }

  /** Lengths of the weighted columns, so that whether they are independent is not the unit's. */
  private static Samples columnLengths(double[][] rows, Samples root) {
    return Samples.generate(
        rows[0].length,
        j -> {
          double sum = 0;
          for (int i = 0; i < rows.length; i++) {
            sum += square(rows[i][j] * root.get(i));
          }
          return sum == 0 ? 1 : Math.sqrt(sum);
        });
  }

  private static double square(double x) {
    return x * x;
  }

  /** Entry (i, j) of (XᵀWX)⁻¹. */
  public double unscaled(int i, int j) {
    return unscaled.get(i * coefficients.size() + j);
  }

  /** Residual standard deviation √(rss / dof); 0 with no degree of freedom left. */
  public double residualSd() {
    return dof == 0 ? 0 : Math.sqrt(rss / dof);
  }

  /** Standard uncertainty of coefficient {@code j}, from the residuals. */
  public double u(int j) {
    return residualSd() * Math.sqrt(unscaled(j, j));
  }

  private static double dot(double[] row, Samples beta) {
    double sum = 0;
    for (int j = 0; j < row.length; j++) {
      sum += row[j] * beta.get(j);
    }
    return sum;
  }
}
