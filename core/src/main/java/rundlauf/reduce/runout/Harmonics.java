package rundlauf.reduce.runout;

import java.util.ArrayList;
import java.util.List;
import rundlauf.maths.Distributions;
import rundlauf.maths.LeastSquares;
import rundlauf.maths.Samples;

/**
 * Which harmonics the readings bear. Order 1 always; others one after the other, the one that takes
 * most out of the residuals first, while the F test of its pair of coefficients finds it at 1 %
 * shared among the orders tried, and two degrees of freedom are left.
 */
final class Harmonics {
  /**
   * Chance of fitting a harmonic that is not there; our choice, because a false one narrows the
   * interval.
   */
  private static final double CHANCE = 0.01;

  private static final int HIGHEST = 7;
  private static final int LEAST_LEFT = 2;

  private Harmonics() {}

  /**
   * The orders to fit.
   *
   * @param angles n angles, rad
   * @param readings n readings
   * @param step what they are rounded to, same unit; no residual variance is believed below its
   *     rounding, step²/12
   * @return 1 and what else is borne, in rising order
   */
  static List<Integer> borne(Samples angles, Samples readings, double step) {
    List<Integer> orders = new ArrayList<>(List.of(1));
    int highest = highest(angles);
    boolean found = true;
    while (found && angles.size() - (1 + 2 * (orders.size() + 1)) >= LEAST_LEFT) {
      found = addBest(orders, highest, angles, readings, step);
    }
    return orders.stream().sorted().toList();
  }

  /** The highest order that so many positions can tell from the ones below. */
  static int highest(Samples angles) {
    return Math.min(HIGHEST, (distinct(angles) - 1) / 2);
  }

  private static boolean addBest(
      List<Integer> orders, int highest, Samples angles, Samples readings, double step) {
    double before = LeastSquares.fit(Curve.rows(angles, orders), readings).rss();
    int tried = 0;
    int best = 0;
    double bestTail = 1;
    for (int order = 2; order <= highest; order++) {
      if (orders.contains(order)) {
        continue;
      }
      tried++;
      List<Integer> more = new ArrayList<>(orders);
      more.add(order);
      var fit = LeastSquares.fit(Curve.rows(angles, more), readings);
      double variance = Math.max(fit.rss() / fit.dof(), step * step / 12);
      double f = (before - fit.rss()) / 2 / variance;
      double tail = f > 0 ? Distributions.fisherTail(f, 2, fit.dof()) : 1;
      if (tail < bestTail) {
        bestTail = tail;
        best = order;
      }
    }
    if (tried == 0 || bestTail * tried > CHANCE) {
      return false;
    }
    orders.add(best);
    return true;
  }

  /** How many different positions of the turn were read. */
  static int distinct(Samples angles) {
    return (int) angles.stream().mapToLong(Harmonics::position).distinct().count();
  }

  static long position(double angle) {
    return Math.floorMod(Math.round(Math.toDegrees(angle) * 1000), 360_000L);
  }

  /**
   * Whether the positions are equally spaced round the turn, so that harmonic k cannot be told from
   * n − k.
   */
  static boolean equallySpaced(Samples angles) {
    long[] at = angles.stream().mapToLong(Harmonics::position).distinct().sorted().toArray();
    long even = 360_000L / at.length;
    for (int i = 1; i < at.length; i++) {
      if (Math.abs(at[i] - at[i - 1] - even) > 2) {
        return false;
      }
    }
    return true;
  }

  /** The largest part of the turn, rad, in which nothing was read. */
  static double widestGap(Samples angles) {
    long[] at = angles.stream().mapToLong(Harmonics::position).distinct().sorted().toArray();
    long gap = 360_000L - at[at.length - 1] + at[0];
    for (int i = 1; i < at.length; i++) {
      gap = Math.max(gap, at[i] - at[i - 1]);
    }
    return Math.toRadians(gap / 1000.0);
  }
}
