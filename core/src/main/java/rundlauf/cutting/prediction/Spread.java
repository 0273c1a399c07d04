package rundlauf.cutting.prediction;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rundlauf.maths.LeastSquares;
import rundlauf.maths.Samples;
import rundlauf.maths.WeightedSamples;
import rundlauf.quantity.Cause;
import rundlauf.quantity.Drawn;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Interval;
import rundlauf.quantity.Measured;
import rundlauf.quantity.Unit;

/** Makes figures of values by state: the central one, its spread, and what is to blame for it. */
final class Spread {
  /** A spread this small beside the value is the rounding of the arithmetic. */
  private static final double NO_DOUBT = 1e-11;

  /** Two inputs whose draws agree so well cannot be told apart. */
  private static final double SAME = 1 - 1e-6;

  /** A slope of fewer of its own standard deviations is chance; our choice. */
  private static final double CHANCE = 3;

  private static final double TAIL = (1 - Interval.LEVEL) / 2;

  private final List<HeldStates.Input> inputs;
  private final double[][] rows;
  private final Cause rest;
  private final boolean restCounts;

  /**
   * @param inputs what is in doubt
   * @param count of states drawn
   * @param rest the cause that what no line through the inputs explains is laid to
   * @param restCounts whether there is such a cause
   */
  Spread(List<HeldStates.Input> inputs, int count, Cause rest, boolean restCounts) {
    this.inputs = apart(inputs, count);
    this.rows = rows(this.inputs, count);
    this.rest = rest;
    this.restCounts = restCounts;
  }

  /**
   * A figure.
   *
   * @param central value by central state, by fine steps
   * @param coarse the same by the steps of the draws
   * @param drawn value by drawn state; SI
   * @return the middle of the central values, with the spread of the draws about it
   */
  Figure figure(Unit unit, double[] central, double[] coarse, double[] drawn) {
    double value = median(central);
    double shift = value - median(coarse);
    Samples all = Samples.generate(drawn.length, i -> drawn[i] + shift);
    double wide = all.max() - all.min();
    if (wide <= NO_DOUBT * Math.max(Math.abs(value), all.max())) {
      return Measured.exact(value, unit);
    }
    var sorted = WeightedSamples.of(all);
    var interval =
        new Interval(
            Math.min(value, sorted.quantile(TAIL)),
            Math.max(value, sorted.quantile(1 - TAIL)),
            Interval.LEVEL);
    Samples even = Samples.generate(drawn.length, i -> 1.0 / drawn.length);
    return Drawn.of(unit, all, even, value, interval, effects(all));
  }

  static double median(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    int n = sorted.length;
    return n % 2 == 1 ? sorted[n / 2] : (sorted[n / 2 - 1] + sorted[n / 2]) / 2;
  }

  /** Effects by cause of the plane through the draws; chance slopes are left out. */
  private Map<Cause, Double> effects(Samples all) {
    Map<Cause, Double> effects = new LinkedHashMap<>();
    int p = inputs.size();
    LeastSquares plane = LeastSquares.fit(rows, all);
    double variance = plane.rss() / Math.max(1, plane.dof());
    for (int j = 0; j < p; j++) {
      double slope = plane.coefficients().get(j + 1);
      double sd = Math.sqrt(variance * plane.unscaled().get((j + 1) * (p + 1) + j + 1));
      if (Math.abs(slope) > CHANCE * sd) {
        inputs.get(j).effects().forEach((c, e) -> effects.merge(c, slope * e, Double::sum));
      }
    }
    if (restCounts && variance > 0) {
      effects.put(rest, Math.sqrt(variance));
    }
    return effects;
  }

  /** A row for each state: 1, then every input from its mean. */
  private static double[][] rows(List<HeldStates.Input> inputs, int count) {
    double[][] rows = new double[count][inputs.size() + 1];
    for (int j = 0; j < inputs.size(); j++) {
      double[] off = off(inputs.get(j), count);
      for (int i = 0; i < count; i++) {
        rows[i][j + 1] = off[i];
      }
    }
    for (double[] row : rows) {
      row[0] = 1;
    }
    return rows;
  }

  private static List<HeldStates.Input> apart(List<HeldStates.Input> inputs, int count) {
    List<HeldStates.Input> kept = new ArrayList<>();
    for (HeldStates.Input input : inputs) {
      double[] off = off(input, count);
      boolean moves = dot(off, off) > 0;
      if (moves && kept.stream().noneMatch(other -> same(off, off(other, count)))) {
        kept.add(input);
      }
    }
    return kept;
  }

  private static boolean same(double[] a, double[] b) {
    return Math.abs(dot(a, b)) > SAME * Math.sqrt(dot(a, a) * dot(b, b));
  }

  private static double[] off(HeldStates.Input input, int count) {
    double mean = 0;
    for (int i = 0; i < count; i++) {
      mean += input.values().get(i) / count;
    }
    double[] off = new double[count];
    for (int i = 0; i < count; i++) {
      off[i] = input.values().get(i) - mean;
    }
    return off;
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }
}
