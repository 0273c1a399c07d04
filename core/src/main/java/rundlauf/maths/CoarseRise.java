package rundlauf.maths;

import java.util.ArrayList;
import java.util.List;

/**
 * Posterior of a rise that dies away (as in {@link RiseFit}, with an unknown offset) whose readings
 * were rounded to a coarse scale: draw k of every row belongs to one state of the world.
 *
 * <p>Given τ the model is linear, and its posterior is that of {@link CoarseScale}; the prior of
 * the rise up to the last time is flat whatever τ is. The prior of τ is even in ln τ. The integral
 * over offset, rise and scatter is had by importance sampling at even steps of ln τ, over the range
 * that bears weight; the draws of all steps are pooled with it.
 *
 * @param offset draws of the level at the start, in the readings' unit
 * @param rise draws of the rise from the start to the last time, in the readings' unit
 * @param timeConstant draws of τ, in the times' unit
 * @param sigma draws of the scatter of a reading, in the readings' unit
 */
public record CoarseRise(Samples offset, Samples rise, Samples timeConstant, Samples sigma) {
  private static final int STEPS = 32;
  private static final int FIRST_ROUND = 250;
  private static final int LAST_ROUND = 400;
  private static final int MOST_WINDOWS = 4;

  /** Variance of a rounding error in steps (JCGM 100:2008, F.2.2.1). */
  private static final double ROUNDING = 1.0 / 12;

  /** What is further down in the logarithm of the density is left out: 1e-6 of the highest. */
  private static final double FAR_DOWN = 14;

  /** An end of the window that is not as far down has the window moved out. */
  private static final double DOWN = 8;

  /**
   * Draws from the posterior.
   *
   * @param times n ≥ 4 times from the start, none negative, in any order, the last over 0
   * @param readings n readings on the scale, any unit
   * @param step what readings are rounded to, same unit, over 0
   * @param shortest lower end of τ's prior, over 0
   * @param longest its upper end
   * @param count number of equally weighted draws wanted, in random order
   * @param stream randomness
   * @throws IllegalArgumentException when the step is not over 0
   * @see "docs/methods/growth.md"
   */
  public static CoarseRise posterior(
      Samples times,
      Samples readings,
      double step,
      double shortest,
      double longest,
      int count,
      Stream stream) {
    if (!(step > 0)) {
      throw new IllegalArgumentException("step " + step + " is not over 0");
    }
    Window window = Window.of(times, readings, step, shortest, longest);
    List<Slice> slices = slices(times, readings, step, window, stream);
    for (int i = 1; i < MOST_WINDOWS && window.cuts(slices); i++) {
      window = window.wider(slices);
      slices = slices(times, readings, step, window, stream);
    }
    return pooled(slices, window, step, count, stream);
  }

  /** The draws at one τ. */
  private record Slice(double lnTau, CoarseSample sample) {
    double logEvidence() {
      return sample.logEvidence();
    }
  }

  private static List<Slice> slices(
      Samples times, Samples readings, double step, Window window, Stream stream) {
    Samples none = Samples.generate(times.size(), i -> 0);
    List<Slice> slices = new ArrayList<>();
    for (int i = 0; i < STEPS; i++) {
      double lnTau = window.at(i);
      double[][] design = RiseFit.design(times, true, Math.exp(lnTau));
      var problem = CoarseProblem.of(design, readings, step, none);
      var first = CoarseSample.draw(problem, CoarseProposal.first(problem), FIRST_ROUND, stream);
      var proposal = CoarseProposal.fitted(problem, first);
      slices.add(new Slice(lnTau, CoarseSample.draw(problem, proposal, LAST_ROUND, stream)));
    }
    return slices;
  }

  private static CoarseRise pooled(
      List<Slice> slices, Window window, double step, int count, Stream stream) {
    double highest = highest(slices);
    double[] shares = new double[STEPS];
    double sum = 0;
    for (int i = 0; i < STEPS; i++) {
      shares[i] = Math.exp(slices.get(i).logEvidence() - highest);
      sum += shares[i];
    }
    double total = sum;
    int[] chosen =
        Resampled.of(
            STEPS * LAST_ROUND,
            k -> shares[k / LAST_ROUND] / total * of(slices, k).weight(k % LAST_ROUND),
            count,
            stream);
    return new CoarseRise(
        Samples.generate(count, k -> beta(slices, chosen[k], 0) * step),
        Samples.generate(count, k -> beta(slices, chosen[k], 1) * step),
        Samples.generate(
            count,
            k -> {
              double within = window.width() * (stream.uniform() - 0.5);
              return Math.exp(slices.get(chosen[k] / LAST_ROUND).lnTau() + within);
            }),
        Samples.generate(
            count, k -> Math.exp(of(slices, chosen[k]).lnSigma(chosen[k] % LAST_ROUND)) * step));
  }

  private static CoarseSample of(List<Slice> slices, int draw) {
    return slices.get(draw / LAST_ROUND).sample();
  }

  private static double beta(List<Slice> slices, int draw, int column) {
    return of(slices, draw).beta(draw % LAST_ROUND, column);
  }

  private static double highest(List<Slice> slices) {
    return slices.stream().mapToDouble(Slice::logEvidence).max().orElseThrow();
  }

  /**
   * The range of ln τ that is looked at, in even steps.
   *
   * @param least of the prior
   * @param most of the prior
   */
  private record Window(double low, double high, double least, double most) {
    private static final int COARSE = 200;

    /** Where least squares, its residuals never less than rounding's, leaves weight. */
    static Window of(
        Samples times, Samples readings, double step, double shortest, double longest) {
      double least = Math.log(shortest);
      double most = Math.log(longest);
      RiseFit best = RiseFit.of(times, readings, true, shortest, longest);
      double floor = times.size() * ROUNDING * step * step;
      double centre = Math.log(best.timeConstant());
      double cell = (most - least) / COARSE;
      double low = centre;
      double high = centre;
      while (low > least && bears(times, readings, low, floor, best)) {
        low = Math.max(least, low - grown(centre - low, cell));
      }
      while (high < most && bears(times, readings, high, floor, best)) {
        high = Math.min(most, high + grown(high - centre, cell));
      }
      return new Window(low, high, least, most);
    }

    /** A first step of a thousandth of a cell, then half as far again each time, a cell at most. */
    private static double grown(double gone, double cell) {
      return Math.min(cell, Math.max(cell / 1000, gone / 2));
    }

    private static boolean bears(
        Samples times, Samples readings, double lnTau, double floor, RiseFit best) {
      double rss = LeastSquares.fit(RiseFit.design(times, true, Math.exp(lnTau)), readings).rss();
      double over = Math.log((rss + floor) / (best.linear().rss() + floor));
      return (times.size() - 2) / 2.0 * over < FAR_DOWN;
    }

    double width() {
      return (high - low) / STEPS;
    }

    /** The middle of step {@code i}. */
    double at(int i) {
      return low + (i + 0.5) * width();
    }

    boolean cuts(List<Slice> slices) {
      double near = highest(slices) - DOWN;
      return low > least && slices.get(0).logEvidence() > near
          || high < most && slices.get(STEPS - 1).logEvidence() > near;
    }

    Window wider(List<Slice> slices) {
      double near = highest(slices) - DOWN;
      double by = (high - low) / 2;
      return new Window(
          slices.get(0).logEvidence() > near ? Math.max(least, low - by) : low,
          slices.get(STEPS - 1).logEvidence() > near ? Math.min(most, high + by) : high,
          least,
          most);
    }
  }
}
