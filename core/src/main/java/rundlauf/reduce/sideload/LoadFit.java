package rundlauf.reduce.sideload;

import java.util.ArrayList;
import java.util.List;
import rundlauf.maths.CoarsePosterior;
import rundlauf.maths.CoarseScale;
import rundlauf.maths.Draws;
import rundlauf.maths.LeastSquares;
import rundlauf.maths.Samples;
import rundlauf.maths.Stream;

/**
 * Draws of the coefficients of {@link LoadLines}.
 *
 * @param coefficients one row of draws a column of the design [m, m/N, m, m]
 * @param sigma draws of the scatter of a reading [m]
 * @param scatterAssumed there are no more readings than unknowns, so the scatter is assumed
 */
record LoadFit(List<Samples> coefficients, Samples sigma, boolean scatterAssumed) {
  /**
   * Scatter of a reading, in steps, where the readings cannot tell it: half-normal of this scale;
   * our choice, as wide as a hurried hand (common practice, no source).
   */
  private static final double ASSUMED_SCATTER = 0.5;

  LoadFit {
    coefficients = List.copyOf(coefficients);
  }

  static LoadFit of(LoadLines lines, String file, double step, Draws draws) {
    double[][] design = lines.design();
    Stream stream = draws.stream(file + "/readings");
    if (design.length > design[0].length) {
      Samples none = Samples.generate(design.length, i -> 0);
      CoarsePosterior found =
          CoarseScale.posterior(design, lines.readings(), step, none, draws.count(), stream);
      return new LoadFit(found.coefficients(), found.sigma(), false);
    }
    return determined(design, lines.readings(), step, draws.count(), stream);
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
