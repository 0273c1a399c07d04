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
    int p = rows[0].length;
    RealMatrix scaled = new Array2DRowRealMatrix(n, p);
    RealVector right = new ArrayRealVector(n);
    for (int i = 0; i < n; i++) {
      double root = Math.sqrt(weights.get(i));
      for (int j = 0; j < p; j++) {
        scaled.setEntry(i, j, rows[i][j] * root);
      }
      right.setEntry(i, y.get(i) * root);
    }
    try {
      DecompositionSolver solver = new QRDecomposition(scaled, SINGULAR).getSolver();
      RealVector beta = solver.solve(right);
      RealMatrix inverse = solver.getInverse();
      RealMatrix covariance = inverse.multiply(inverse.transpose());
      Samples residuals = Samples.generate(n, i -> y.get(i) - dot(rows[i], beta));
      double rss = 0;
      for (int i = 0; i < n; i++) {
        rss += weights.get(i) * residuals.get(i) * residuals.get(i);
      }
      Samples flat = Samples.generate(p * p, k -> covariance.getEntry(k / p, k % p));
      return new LeastSquares(Samples.of(beta.toArray()), flat, rss, n - p, residuals);
    } catch (MathRuntimeException e) {
      throw new IllegalArgumentException("the columns of the fit are not independent", e);
    }
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

  private static double dot(double[] row, RealVector beta) {
    double sum = 0;
    for (int j = 0; j < row.length; j++) {
      sum += row[j] * beta.getEntry(j);
    }
    return sum;
  }
}
