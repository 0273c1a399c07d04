package rundlauf.maths;

/**
 * Posterior of a linear model whose readings were rounded to a coarse scale.
 *
 * <p>Reading j is the event that {@code x_j β + noise} lay within half a step of what was read, so
 * its likelihood is {@code Φ((r + d/2 − m)/s) − Φ((r − d/2 − m)/s)} with {@code s² = σ² + f ·
 * extra²}, where f, anywhere from 0 to 1, says how much of the extra scatter came true. The prior
 * is flat in β; that of σ is {@code ScatterPrior}. Drawn by adaptive importance sampling: each
 * round proposes from a Student density fitted to the round before; the last round is resampled to
 * equal weights.
 */
public final class CoarseScale {
  private static final int ROUND = 700;
  private static final int FEWEST_ROUNDS = 2;
  private static final int MOST_ROUNDS = 6;
  private static final int LAST_ROUND = 4000;

  /** A round worth this share of its draws is good enough to propose the last one from. */
  private static final double GOOD_SHARE = 0.2;

  private CoarseScale() {}

  /**
   * Draws from the posterior.
   *
   * @param rows design, n rows of p numbers, n &gt; p, columns independent
   * @param readings n readings on the scale, any unit
   * @param step what readings are rounded to, same unit, over 0
   * @param extra n standard deviations that are added in quadrature to σ at the most, same unit,
   *     none negative
   * @param count number of equally weighted draws wanted, in random order
   * @param stream randomness
   * @return draws of β (flat prior) and σ, in the readings' unit (per unit of the design's columns)
   * @throws IllegalArgumentException when the columns are not independent, n ≤ p, or the step is
   *     not over 0
   * @see "docs/methods/coarse-scale.md"
   */
  public static CoarsePosterior posterior(
      double[][] rows, Samples readings, double step, Samples extra, int count, Stream stream) {
    if (!(step > 0)) {
      throw new IllegalArgumentException("step " + step + " is not over 0");
    }
    var problem = CoarseProblem.of(rows, readings, step, extra);
    var proposal = CoarseProposal.first(problem);
    double effective = 0;
    for (int round = 0;
        round < FEWEST_ROUNDS || (round < MOST_ROUNDS && effective < GOOD_SHARE * ROUND);
        round++) {
      var sample = CoarseSample.draw(problem, proposal, ROUND, stream);
      proposal = CoarseProposal.fitted(problem, sample);
      effective = sample.effective();
    }
    var last = CoarseSample.draw(problem, proposal, Math.max(LAST_ROUND, count / 2), stream);
    return CoarsePosterior.of(
        problem, last, Resampled.of(last.size(), last::weight, count, stream));
  }
}
