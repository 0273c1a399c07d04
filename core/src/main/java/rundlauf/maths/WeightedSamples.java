package rundlauf.maths;

import java.util.Arrays;

/**
 * Draws with weights, sorted by value: an empirical distribution.
 *
 * @param values ascending
 * @param weights as many, none negative, summing to 1
 */
public record WeightedSamples(Samples values, Samples weights) {
  /**
   * Sorts and normalises.
   *
   * @param values n numbers in any order, finite
   * @param weights n numbers, none negative, not all 0
   */
  public static WeightedSamples of(Samples values, Samples weights) {
    int[] order = order(values);
    double sum = weights.sum();
    return new WeightedSamples(
        Samples.generate(order.length, i -> values.get(order[i])),
        Samples.generate(order.length, i -> weights.get(order[i]) / sum));
  }

  /**
   * Indices in rising order of value. The bits of each number, turned so that they sort as a whole
   * number, give their lowest bits to its index: one sort of plain numbers, ten times as fast as
   * one of objects; numbers that agree to ten digits may change places, which no quantile feels.
   */
  private static int[] order(Samples values) {
    int n = values.size();
    long mask = Long.highestOneBit(Math.max(1, n)) * 2 - 1;
    long[] keys = new long[n];
    for (int i = 0; i < n; i++) {
      long bits = Double.doubleToLongBits(values.get(i));
      long sortable = bits < 0 ? ~bits ^ Long.MIN_VALUE : bits;
      keys[i] = (sortable & ~mask) | i;
    }
    Arrays.sort(keys);
    int[] order = new int[n];
    for (int i = 0; i < n; i++) {
      order[i] = (int) (keys[i] & mask);
    }
    return order;
  }

  /** All weights equal. */
  public static WeightedSamples of(Samples values) {
    double[] sorted = values.toArray();
    Arrays.sort(sorted);
    double each = 1.0 / sorted.length;
    return new WeightedSamples(Samples.of(sorted), Samples.generate(sorted.length, i -> each));
  }

  /** The value below which the weights sum to {@code p}, linear between the draws' mid-weights. */
  public double quantile(double p) {
    double before = 0;
    double lastMiddle = 0;
    double last = values.get(0);
    for (int i = 0; i < values.size(); i++) {
      double middle = before + weights.get(i) / 2;
      if (middle >= p) {
        double part = middle > lastMiddle && i > 0 ? (p - lastMiddle) / (middle - lastMiddle) : 1;
        return last + part * (values.get(i) - last);
      }
      before += weights.get(i);
      lastMiddle = middle;
      last = values.get(i);
    }
    return last;
  }

  public double mean() {
    double sum = 0;
    for (int i = 0; i < values.size(); i++) {
      sum += weights.get(i) * values.get(i);
    }
    return sum;
  }

  public double standardDeviation() {
    return standardDeviation(values, weights);
  }

  /** Standard deviation of draws in any order whose weights need not sum to 1. */
  public static double standardDeviation(Samples values, Samples weights) {
    double total = weights.sum();
    double mean = 0;
    for (int i = 0; i < values.size(); i++) {
      mean += weights.get(i) * values.get(i) / total;
    }
    double sum = 0;
    for (int i = 0; i < values.size(); i++) {
      double off = values.get(i) - mean;
      sum += weights.get(i) * off * off / total;
    }
    return Math.sqrt(sum);
  }

  /** Weight of all values over {@code limit}. */
  public double above(double limit) {
    double sum = 0;
    for (int i = values.size() - 1; i >= 0 && values.get(i) > limit; i--) {
      sum += weights.get(i);
    }
    return sum;
  }
}
