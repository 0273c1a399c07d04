package rundlauf.maths;

/** The readings in units of one step, and the logarithm of the posterior density. */
final class CoarseProblem {
  /**
   * Below this ratio of step to scatter the rounding is lost and the density serves as well as the
   * difference.
   */
  private static final double LOST = 1e-3;

  private static final double ROOT_TWO_PI = Math.sqrt(2 * Math.PI);

  private final double[][] rows;
  private final double[] readings;
  private final double[] extraSquared;
  private final double step;
  private final LeastSquares fit;

  private CoarseProblem(
      double[][] rows, double[] readings, double[] extraSquared, double step, LeastSquares fit) {
    this.rows = rows;
    this.readings = readings;
    this.extraSquared = extraSquared;
    this.step = step;
    this.fit = fit;
  }

  static CoarseProblem of(double[][] rows, Samples readings, double step, Samples extra) {
    if (rows.length <= rows[0].length) {
      throw new IllegalArgumentException(
          rows.length + " readings do not bear " + rows[0].length + " unknowns");
    }
    Samples scaled = readings.map(r -> r / step);
    double[] squared = extra.map(e -> e * e / (step * step)).toArray();
    return new CoarseProblem(rows, scaled.toArray(), squared, step, LeastSquares.fit(rows, scaled));
  }

  int n() {
    return readings.length;
  }

  int p() {
    return rows[0].length;
  }

  double step() {
    return step;
  }

  LeastSquares fit() {
    return fit;
  }

  /**
   * Logarithm of likelihood × prior at β, ln σ (density in ln σ), up to a constant.
   *
   * @param share of the extra variances, 0 to 1
   */
  double logPosterior(double[] beta, double lnSigma, double share) {
    double sigma = Math.exp(lnSigma);
    double log = 0;
    double product = 1;
    for (int j = 0; j < readings.length; j++) {
      product *= probability(j, beta, sigma, share);
      if (product < 1e-200) {
        if (product == 0) {
          return Double.NEGATIVE_INFINITY;
        }
        log += Math.log(product);
        product = 1;
      }
    }
    return log + Math.log(product) + ScatterPrior.logDensity(sigma) + lnSigma;
  }

  private double probability(int j, double[] beta, double sigma, double share) {
    double middle = readings[j];
    double[] row = rows[j];
    for (int i = 0; i < row.length; i++) {
      middle -= row[i] * beta[i];
    }
    double extra = share * extraSquared[j];
    double s = extra == 0 ? sigma : Math.sqrt(sigma * sigma + extra);
    if (1 < LOST * s) {
      double z = middle / s;
      return Math.exp(-z * z / 2) / (s * ROOT_TWO_PI);
    }
    return NormalTable.between((middle - 0.5) / s, (middle + 0.5) / s);
  }
}
