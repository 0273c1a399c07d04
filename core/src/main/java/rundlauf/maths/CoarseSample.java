package rundlauf.maths;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.RealMatrix;

/**
 * Weighted draws from a posterior, in steps of the scale; kept as bare arrays for speed and never
 * shown outside.
 */
final class CoarseSample {
  private final double[][] betas;
  private final double[] lnSigmas;
  private final double[] weights;
  private final double logEvidence;

  private CoarseSample(double[][] betas, double[] lnSigmas, double[] weights, double logEvidence) {
    this.betas = betas;
    this.lnSigmas = lnSigmas;
    this.weights = weights;
    this.logEvidence = logEvidence;
  }

  /** What a sample says of the posterior: moments of β / √(σ² + 1/12) and of ln σ. */
  record Moments(
      Samples mean,
      RealMatrix covariance,
      double lnSigma,
      double lnSigmaVariance,
      double effective) {}

  static CoarseSample draw(
      CoarseProblem problem, CoarseProposal proposal, int size, Stream stream) {
    double[][] betas = new double[size][problem.p()];
    double[] lnSigmas = new double[size];
    double[] weights = new double[size];
    double largest = Double.NEGATIVE_INFINITY;
    for (int k = 0; k < size; k++) {
      lnSigmas[k] = proposal.draw(stream, betas[k]);
      weights[k] =
          problem.logPosterior(betas[k], lnSigmas[k], stream.uniform())
              - proposal.logDensity(betas[k], lnSigmas[k]);
      largest = Math.max(largest, weights[k]);
    }
    double sum = 0;
    for (int k = 0; k < size; k++) {
      weights[k] = largest == Double.NEGATIVE_INFINITY ? 1 : Math.exp(weights[k] - largest);
      sum += weights[k];
    }
    for (int k = 0; k < size; k++) {
      weights[k] /= sum;
    }
    return new CoarseSample(betas, lnSigmas, weights, largest + Math.log(sum / size));
  }

  /**
   * Logarithm of the mean weight: of the integral of likelihood times prior, up to a constant that
   * all problems with as many unknowns share.
   */
  double logEvidence() {
    return logEvidence;
  }

  int size() {
    return weights.length;
  }

  double weight(int k) {
    return weights[k];
  }

  double beta(int k, int i) {
    return betas[k][i];
  }

  double lnSigma(int k) {
    return lnSigmas[k];
  }

  /** How many independent draws the sample is worth: 1 / Σw² (Kong 1992; from memory). */
  double effective() {
    double squares = 0;
    for (double w : weights) {
      squares += w * w;
    }
    return 1 / squares;
  }

  Moments moments() {
    int p = betas[0].length;
    double[] mean = new double[p];
    double lnSigma = 0;
    for (int k = 0; k < weights.length; k++) {
      lnSigma += weights[k] * lnSigmas[k];
      for (int i = 0; i < p; i++) {
        mean[i] += weights[k] * betas[k][i];
      }
    }
    double variance = 0;
    RealMatrix covariance = new Array2DRowRealMatrix(p, p);
    for (int k = 0; k < weights.length; k++) {
      double off = lnSigmas[k] - lnSigma;
      variance += weights[k] * off * off;
      addSpread(covariance, betas[k], mean, weights[k] / CoarsePart.spreadSquared(lnSigmas[k]));
    }
    return new Moments(Samples.of(mean), covariance, lnSigma, variance, effective());
  }

  private static void addSpread(
      RealMatrix covariance, double[] beta, double[] mean, double weight) {
    for (int i = 0; i < mean.length; i++) {
      for (int j = 0; j < mean.length; j++) {
        covariance.addToEntry(i, j, weight * (beta[i] - mean[i]) * (beta[j] - mean[j]));
      }
    }
  }
}
