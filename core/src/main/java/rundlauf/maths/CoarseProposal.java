package rundlauf.maths;

import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.RealMatrix;

/**
 * A density to propose from: a mixture of Student densities.
 *
 * @param parts the densities
 * @param shares how often each is used, summing to 1
 */
record CoarseProposal(List<CoarsePart> parts, Samples shares) {
  /**
   * Widens what was fitted: a proposal with short tails loses weight where the posterior has it.
   */
  private static final double WIDER = 1.2;

  /** Variance of ln σ that is leant on while there are few draws to go by. */
  private static final double FIRST_VARIANCE = 0.6;

  /** So many effective draws weigh as much as the first guess. */
  private static final double GUESS_WORTH = 10;

  /** Scatter, in steps squared, below which the residuals of least squares say nothing. */
  private static final double LEAST = 0.02;

  /** From least squares: a narrow and a broad part. */
  static CoarseProposal first(CoarseProblem problem) {
    return new CoarseProposal(
        List.of(guess(problem, 1, 0.8), broad(problem)), Samples.of(0.6, 0.4));
  }

  private static CoarsePart broad(CoarseProblem problem) {
    // Rounding errors of equal readings are not independent: the region then is wider than least
    // squares thinks.
    return guess(problem, Math.max(2, problem.n() / (double) problem.p()), 1.2);
  }

  private static CoarsePart guess(CoarseProblem problem, double wider, double width) {
    LeastSquares fit = problem.fit();
    double rms = Math.sqrt(fit.rss() / fit.dof() + LEAST);
    RealMatrix covariance = unscaled(fit);
    return CoarsePart.of(
        fit.coefficients(), covariance.scalarMultiply(wider * wider), Math.log(rms), width);
  }

  /** From the weighted moments of a sample, with the broad first guess kept as a guard. */
  static CoarseProposal fitted(CoarseProblem problem, CoarseSample sample) {
    CoarseSample.Moments moments = sample.moments();
    double trust = moments.effective() / (moments.effective() + GUESS_WORTH);
    RealMatrix covariance =
        moments
            .covariance()
            .scalarMultiply(trust)
            .add(unscaled(problem.fit()).scalarMultiply(1 - trust));
    double width = Math.sqrt(trust * moments.lnSigmaVariance() + (1 - trust) * FIRST_VARIANCE);
    CoarsePart fitted =
        CoarsePart.of(
            moments.mean(),
            covariance.scalarMultiply(WIDER * WIDER),
            moments.lnSigma(),
            WIDER * width);
    return new CoarseProposal(List.of(fitted, broad(problem)), Samples.of(0.9, 0.1));
  }

  private static RealMatrix unscaled(LeastSquares fit) {
    int p = fit.coefficients().size();
    RealMatrix matrix = new Array2DRowRealMatrix(p, p);
    for (int i = 0; i < p; i++) {
      for (int j = 0; j < p; j++) {
        matrix.setEntry(i, j, fit.unscaled(i, j));
      }
    }
    return matrix;
  }

  /** Draws β into {@code beta} and returns ln σ. */
  double draw(Stream stream, double[] beta) {
    double u = stream.uniform();
    int which = 0;
    while (which < parts.size() - 1 && u >= shares.get(which)) {
      u -= shares.get(which);
      which++;
    }
    return parts.get(which).draw(stream, beta);
  }

  /** Logarithm of the density at β, ln σ, up to a constant. */
  double logDensity(double[] beta, double lnSigma) {
    double sum = 0;
    for (int k = 0; k < parts.size(); k++) {
      sum += shares.get(k) * Math.exp(parts.get(k).logDensity(beta, lnSigma));
    }
    return Math.log(sum);
  }
}
