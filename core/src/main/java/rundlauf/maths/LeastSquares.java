package rundlauf.maths;

import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;

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
    return new Design(rows, weights).fit(y);
  }

  /**
   * The rows of a fit with what can be worked out before the readings: for many fits of one kind.
   */
  public static final class Design {
    private final double[][] rows;
    private final Samples weights;
    private final double[][] inverse;
    private final Samples unscaled;

    /** All weights 1; see {@link #Design(double[][], Samples)}. */
    public Design(double[][] rows) {
      this(rows, Samples.generate(rows.length, i -> 1));
    }

    /**
     * Decomposes by QR with Householder reflections.
     *
     * @param rows n rows of p numbers, n ≥ p
     * @param weights n numbers over 0
     * @throws IllegalArgumentException when the columns are not independent
     */
    public Design(double[][] rows, Samples weights) {
      this.rows = rows;
      this.weights = weights;
      Samples root = weights.map(Math::sqrt);
      Samples length = columnLengths(rows, root);
      int p = length.size();
      RealMatrix scaled = new Array2DRowRealMatrix(rows.length, p);
      for (int i = 0; i < rows.length; i++) {
        for (int j = 0; j < p; j++) {
          scaled.setEntry(i, j, rows[i][j] * root.get(i) / length.get(j));
        }
      }
      try {
        this.inverse = new QRDecomposition(scaled, SINGULAR).getSolver().getInverse().getData();
      } catch (MathRuntimeException e) {
        throw new IllegalArgumentException("the columns of the fit are not independent", e);
      }
      for (int j = 0; j < p; j++) {
        for (int i = 0; i < rows.length; i++) {
          inverse[j][i] /= length.get(j);
        }
      }
      this.unscaled = Samples.generate(p * p, k -> dot(inverse[k / p], inverse[k % p]));
      for (int j = 0; j < p; j++) {
        for (int i = 0; i < rows.length; i++) {
          inverse[j][i] *= root.get(i);
        }
      }
    }

    /** The fit of n readings. */
    public LeastSquares fit(Samples y) {
      int n = rows.length;
      int p = inverse.length;
      double[] readings = y.toArray();
      Samples beta = Samples.generate(p, j -> dot(inverse[j], readings));
      double[] fitted = beta.toArray();
      Samples residuals = Samples.generate(n, i -> readings[i] - dot(rows[i], fitted));
      double rss = Samples.generate(n, i -> weights.get(i) * square(residuals.get(i))).sum();
      return new LeastSquares(beta, unscaled, rss, n - p, residuals);
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

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int j = 0; j < a.length; j++) {
      sum += a[j] * b[j];
    }
    return sum;
  }
}
