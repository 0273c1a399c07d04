package rundlauf.maths;

import java.util.Arrays;
import java.util.Comparator;

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
    int n = values.size();
    Integer[] order = new Integer[n];
    for (int i = 0; i < n; i++) {
      order[i] = i;
    }
    Arrays.sort(order, Comparator.comparingDouble(values::get));
    double sum = weights.sum();
    return new WeightedSamples(
        Samples.generate(n, i -> values.get(order[i])),
        Samples.generate(n, i -> weights.get(order[i]) / sum));
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
    double mean = mean();
    double sum = 0;
    for (int i = 0; i < values.size(); i++) {
      double off = values.get(i) - mean;
      sum += weights.get(i) * off * off;
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
