package rundlauf.reduce.runout;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import rundlauf.maths.Distributions;
import rundlauf.maths.LeastSquares;
import rundlauf.maths.Samples;

/**
 * Which harmonics the readings bear. Order 1 always; others one after the other, the one that takes
 * most out of the residuals first, while the F test of its pair of coefficients finds it at 1 %
 * shared among the orders tried, and two degrees of freedom are left. Two strong orders hide one
 * another from such a test: where no order is found alone, two are tried together, each of which
 * must then be found beside the other.
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
    Test test = new Test(angles, readings, step);
    boolean found = true;
    while (found) {
      found =
          test.added(orders, singles(highest, orders))
              || test.added(orders, pairs(highest, orders));
    }
    return orders.stream().sorted().toList();
  }

  /** The highest order that so many positions can tell from the ones below. */
  static int highest(Samples angles) {
    return Math.min(HIGHEST, (distinct(angles) - 1) / 2);
  }

  private static List<List<Integer>> singles(int highest, List<Integer> orders) {
    return IntStream.rangeClosed(2, highest)
        .filter(k -> !orders.contains(k))
        .mapToObj(List::of)
        .toList();
  }

  private static List<List<Integer>> pairs(int highest, List<Integer> orders) {
    List<List<Integer>> singles = singles(highest, orders);
    List<List<Integer>> pairs = new ArrayList<>();
    for (int i = 0; i < singles.size(); i++) {
      for (int j = i + 1; j < singles.size(); j++) {
        pairs.add(List.of(singles.get(i).get(0), singles.get(j).get(0)));
      }
    }
    return pairs;
  }

  /** Readings against which orders are tried. */
  private record Test(Samples angles, Samples readings, double step) {
    /** Adds the best of these sets of orders, if any is borne. */
    boolean added(List<Integer> orders, List<List<Integer>> sets) {
      List<Integer> best = List.of();
      double least = CHANCE;
      for (List<Integer> set : sets) {
        double tail = tail(orders, set) * sets.size();
        if (tail <= least && eachNeeded(orders, set)) {
          least = tail;
          best = set;
        }
      }
      return orders.addAll(best);
    }

    private boolean eachNeeded(List<Integer> orders, List<Integer> set) {
      return set.size() == 1
          || set.stream()
              .allMatch(
                  one -> {
                    List<Integer> rest = new ArrayList<>(orders);
                    set.stream().filter(o -> !o.equals(one)).forEach(rest::add);
                    return tail(rest, List.of(one)) <= CHANCE;
                  });
    }

    /** Chance of such a gain by these orders, were they not there; 1 with too few readings. */
    private double tail(List<Integer> orders, List<Integer> set) {
      List<Integer> more = new ArrayList<>(orders);
      more.addAll(set);
      if (angles.size() - (1 + 2 * more.size()) < LEAST_LEFT) {
        return 1;
      }
      double before = LeastSquares.fit(Curve.rows(angles, orders), readings).rss();
      var fit = LeastSquares.fit(Curve.rows(angles, more), readings);
      double variance = Math.max(fit.rss() / fit.dof(), step * step / 12);
      int added = 2 * set.size();
      double f = (before - fit.rss()) / added / variance;
      return f > 0 ? Distributions.fisherTail(f, added, fit.dof()) : 1;
    }
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
