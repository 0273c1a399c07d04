package rundlauf.cutting.prediction;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rundlauf.maths.LeastSquares;
import rundlauf.maths.Samples;
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
  private final LeastSquares.Design plane;
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
    this.plane = new LeastSquares.Design(rows(this.inputs, count));
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
    double[] sorted = all.toArray();
    Arrays.sort(sorted);
    var interval =
        new Interval(
            Math.min(value, quantile(sorted, TAIL)),
            Math.max(value, quantile(sorted, 1 - TAIL)),
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

  /**
   * The value at rank p (n + 1): between two such, few draws hold a further one as often as they
   * say, however it is distributed (order statistics divide it evenly).
   */
  private static double quantile(double[] sorted, double p) {
    double rank = Math.min(sorted.length, Math.max(1, p * (sorted.length + 1)));
    int below = (int) Math.floor(rank);
    int above = Math.min(sorted.length, below + 1);
    return sorted[below - 1] + (rank - below) * (sorted[above - 1] - sorted[below - 1]);
  }

  /** Effects by cause of the plane through the draws; chance slopes are left out. */
  private Map<Cause, Double> effects(Samples all) {
    Map<Cause, Double> effects = new LinkedHashMap<>();
    LeastSquares fit = plane.fit(all);
    for (int j = 0; j < inputs.size(); j++) {
      double slope = fit.coefficients().get(j + 1);
      if (Math.abs(slope) > CHANCE * fit.u(j + 1)) {
        inputs.get(j).effects().forEach((c, e) -> effects.merge(c, slope * e, Double::sum));
      }
    }
    if (restCounts && fit.rss() > 0) {
      effects.put(rest, fit.residualSd());
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
