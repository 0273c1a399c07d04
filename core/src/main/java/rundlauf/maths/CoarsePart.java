package rundlauf.maths;

import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;

/**
 * One Student density over (β, ln σ): ln σ first, then β with a spread that follows σ, so that the
 * funnel of large σ is followed. All in steps of the scale.
 */
final class CoarsePart {
  private static final int DOF = 5;

  /** Variance of a rounding error (JCGM 100:2008, F.2.2.1). */
  private static final double ROUNDING = 1.0 / 12;

  private final double[] centre;
  private final double[][] factor;
  private final double lnDeterminant;
  private final double lnSigma;
  private final double width;

  private CoarsePart(double[] centre, double[][] factor, double lnSigma, double width) {
    this.centre = centre;
    this.factor = factor;
    this.lnSigma = lnSigma;
    this.width = width;
    double sum = 0;
    for (int i = 0; i < centre.length; i++) {
      sum += Math.log(factor[i][i]);
    }
    this.lnDeterminant = sum;
  }

  /**
   * A density.
   *
   * @param centre of β
   * @param covariance of β / √(σ² + 1/12), positive definite
   * @param lnSigma centre of ln σ
   * @param width of ln σ
   */
  static CoarsePart of(Samples centre, RealMatrix covariance, double lnSigma, double width) {
    RealMatrix factor = new CholeskyDecomposition(covariance, 1e-6, 0).getL();
    return new CoarsePart(centre.toArray(), factor.getData(), lnSigma, width);
  }

  static double spreadSquared(double lnSigma) {
    return Math.exp(2 * lnSigma) + ROUNDING;
  }

  /** Draws β into {@code beta} and returns ln σ. */
  double draw(Stream stream, double[] beta) {
    double drawn = lnSigma + width * stream.gaussian() * heavy(stream);
    double scale = Math.sqrt(spreadSquared(drawn)) * heavy(stream);
    int p = beta.length;
    double[] z = new double[p];
    for (int i = 0; i < p; i++) {
      z[i] = stream.gaussian();
    }
    for (int i = 0; i < p; i++) {
      double sum = 0;
      for (int j = 0; j <= i; j++) {
        sum += factor[i][j] * z[j];
      }
      beta[i] = centre[i] + scale * sum;
    }
    return drawn;
  }

  /** √(ν / χ²): turns a normal number into Student's t. */
  private static double heavy(Stream stream) {
    double squares = 0;
    for (int i = 0; i < DOF; i++) {
      double g = stream.gaussian();
      squares += g * g;
    }
    return Math.sqrt(DOF / squares);
  }

  /** Logarithm of the density, up to a constant that all parts share. */
  double logDensity(double[] beta, double at) {
    int p = beta.length;
    double spread = spreadSquared(at);
    double t = (at - lnSigma) / width;
    return -(DOF + 1) / 2.0 * Math.log1p(t * t / DOF)
        - Math.log(width)
        - (DOF + p) / 2.0 * Math.log1p(distanceSquared(beta) / spread / DOF)
        - lnDeterminant
        - p / 2.0 * Math.log(spread);
  }

  private double distanceSquared(double[] beta) {
    double[] z = new double[beta.length];
    double sum = 0;
    for (int i = 0; i < z.length; i++) {
      double rest = beta[i] - centre[i];
      for (int j = 0; j < i; j++) {
        rest -= factor[i][j] * z[j];
      }
      z[i] = rest / factor[i][i];
      sum += z[i] * z[i];
    }
    return sum;
  }
}
