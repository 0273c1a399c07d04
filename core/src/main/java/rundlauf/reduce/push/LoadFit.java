package rundlauf.reduce.push;

import java.util.ArrayList;
import java.util.List;
import rundlauf.maths.CoarsePosterior;
import rundlauf.maths.CoarseScale;
import rundlauf.maths.Draws;
import rundlauf.maths.LeastSquares;
import rundlauf.maths.Samples;
import rundlauf.maths.Stream;
import rundlauf.maths.WeightedSamples;

/**
 * Draws of the coefficients of {@link LoadLines}.
 *
 * @param coefficients one row of draws a column of the design [m, m/N, m, m]
 * @param sigma draws of the scatter of a reading [m]
 * @param scatterAssumed there are no more readings than unknowns, so the scatter is assumed
 */
public record LoadFit(List<Samples> coefficients, Samples sigma, boolean scatterAssumed) {
  /**
   * Scatter of a reading, in steps, where the readings cannot tell it: half-normal of this scale;
   * our choice, as wide as a hurried hand (common practice, no source).
   */
  private static final double ASSUMED_SCATTER = 0.5;

  /**
   * Few coarse readings that happen to lie well make the scatter look smaller than a hand's that
   * misses by half a division: without this share of the width the intervals of the slope held the
   * truth in 90 to 94 % there. Our choice, by the table in docs/quality.md; it fades as the scatter
   * outgrows the step, where least squares is right.
   */
  private static final double COARSE_EXCESS = 0.18;

  public LoadFit {
    coefficients = List.copyOf(coefficients);
  }

  public static LoadFit of(LoadLines lines, String file, double step, Draws draws) {
    double[][] design = lines.design();
    Stream stream = draws.stream(file + "/readings");
    if (design.length > design[0].length) {
      Samples none = Samples.generate(design.length, i -> 0);
      CoarsePosterior found =
          CoarseScale.posterior(design, lines.readings(), step, none, draws.count(), stream);
      double times = wider(found.sigma(), step);
      List<Samples> coefficients =
          found.coefficients().stream().map(c -> widened(c, times)).toList();
      return new LoadFit(coefficients, found.sigma(), false);
    }
    return determined(design, lines.readings(), step, draws.count(), stream);
  }

  private static double wider(Samples sigma, double step) {
    double steps = WeightedSamples.of(sigma).quantile(0.5) / step;
    return 1 + COARSE_EXCESS / (1 + steps * steps);
  }

  private static Samples widened(Samples draws, double times) {
    double middle = WeightedSamples.of(draws).quantile(0.5);
    return draws.map(x -> middle + times * (x - middle));
  }

  /** As many readings as unknowns: each reading may lie anywhere in its step, and scatters. */
  private static LoadFit determined(
      double[][] design, Samples readings, double step, int count, Stream stream) {
    int n = design.length;
    Samples sigma =
        Samples.generate(count, k -> ASSUMED_SCATTER * step * Math.abs(stream.gaussian()));
    double[][] inverse = inverse(design);
    double[][] draws = new double[n][count];
    for (int k = 0; k < count; k++) {
      for (int j = 0; j < n; j++) {
        double off = step * (stream.uniform() - 0.5) + sigma.get(k) * stream.gaussian();
        for (int i = 0; i < n; i++) {
          draws[i][k] += inverse[i][j] * (readings.get(j) + off);
        }
      }
    }
    List<Samples> coefficients = new ArrayList<>();
    for (double[] row : draws) {
      coefficients.add(Samples.of(row));
    }
    return new LoadFit(coefficients, sigma, true);
  }

  /** What each reading does to each coefficient. */
  private static double[][] inverse(double[][] design) {
    int n = design.length;
    double[][] inverse = new double[n][n];
    for (int j = 0; j < n; j++) {
      int one = j;
      Samples unit = Samples.generate(n, i -> i == one ? 1 : 0);
      Samples column = LeastSquares.fit(design, unit).coefficients();
      for (int i = 0; i < n; i++) {
        inverse[i][j] = column.get(i);
      }
    }
    return inverse;
  }
}
