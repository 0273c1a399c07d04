package rundlauf.maths;

import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * Least squares of a rise that dies away, {@code y = offset + rise · s(t)}, with s(t) = (1 −
 * exp(−t/τ)) / (1 − exp(−T/τ)) and T the last time: the rise is what was seen up to then, so that
 * it stays finite where the curve has not begun to bend.
 *
 * @param timeConstant τ, in the unit of the times
 * @param linear the fit at that τ; its last coefficient is the rise, the one before it the offset
 */
public record RiseFit(double timeConstant, LeastSquares linear) {
  /** Steps of ln τ that the search begins with. */
  private static final int STEPS = 60;

  private static final double PRECISION = 1e-14;

  /**
   * The τ of least residuals: the least of even steps of ln τ, refined to where their slope is 0,
   * by Brent's method.
   *
   * @param times n ≥ 3 times from the start, none negative
   * @param readings n readings, any unit
   * @param offset whether the level at the start is unknown; else it is 0
   * @param shortest least τ that is tried, over 0
   * @param longest largest τ that is tried
   * @return the fit; τ at an end of what was tried where the residuals fall up to there
   * @see "variable projection: Golub and Pereyra 1973 (from memory)"
   */
  public static RiseFit of(
      Samples times, Samples readings, boolean offset, double shortest, double longest) {
    double first = Math.log(shortest);
    double step = (Math.log(longest) - first) / STEPS;
    double best = first;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i <= STEPS; i++) {
      double rss = at(times, readings, offset, first + i * step).rss();
      if (rss < least) {
        least = rss;
        best = first + i * step;
      }
    }
    double low = Math.max(first, best - step);
    double high = Math.min(Math.log(longest), best + step);
    double lnTau =
        slope(times, readings, offset, low) < 0 && slope(times, readings, offset, high) > 0
            ? new BracketingNthOrderBrentSolver(PRECISION, PRECISION, 5)
                .solve(200, x -> slope(times, readings, offset, x), low, high)
            : best;
    return new RiseFit(Math.exp(lnTau), at(times, readings, offset, lnTau));
  }

  /** Half the derivative of the sum of squares by ln τ: residuals are square to the columns. */
  private static double slope(Samples times, Samples readings, boolean offset, double lnTau) {
    LeastSquares fit = at(times, readings, offset, lnTau);
    double rise = fit.coefficients().get(offset ? 1 : 0);
    double span = times.max();
    double sum = 0;
    for (int i = 0; i < times.size(); i++) {
      sum -= fit.residuals().get(i) * rise * shareByLnTau(times.get(i), span, Math.exp(lnTau));
    }
    return sum;
  }

  private static double shareByLnTau(double time, double span, double timeConstant) {
    double a = time / timeConstant;
    double whole = span / timeConstant;
    double below = Math.expm1(-whole);
    return (a * Math.exp(-a) * below - Math.expm1(-a) * whole * Math.exp(-whole)) / (below * below);
  }

  private static LeastSquares at(Samples times, Samples readings, boolean offset, double lnTau) {
    return LeastSquares.fit(design(times, offset, Math.exp(lnTau)), readings);
  }

  /** A column for the offset, if there is one, and one for the rise. */
  static double[][] design(Samples times, boolean offset, double timeConstant) {
    double[][] rows = new double[times.size()][offset ? 2 : 1];
    for (int i = 0; i < rows.length; i++) {
      rows[i][0] = 1;
      rows[i][rows[i].length - 1] = share(times.get(i), times.max(), timeConstant);
    }
    return rows;
  }

  /**
   * Which share of the rise up to {@code span} is there at {@code time}.
   *
   * @param time from the start
   * @param span over 0
   * @param timeConstant over 0
   */
  public static double share(double time, double span, double timeConstant) {
    return Math.expm1(-time / timeConstant) / Math.expm1(-span / timeConstant);
  }
}
