package rundlauf.reduce.runout;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rundlauf.maths.Draws;
import rundlauf.maths.LeastSquares;
import rundlauf.maths.Samples;
import rundlauf.maths.Stream;
import rundlauf.maths.WeightedSamples;
import rundlauf.quantity.Cause;
import rundlauf.quantity.Drawn;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Interval;
import rundlauf.quantity.Unit;
import rundlauf.readings.RunoutReadings;

/**
 * Motion in step with the turning: the range, over the angles read, of the mean over turns less its
 * once-a-turn part.
 *
 * @param form that mean, about its least-squares circle [m]
 * @param noises what scatter and rounding may have put on it, draw by draw [m]
 */
record SynchronousMotion(Samples form, List<Samples> noises) {
  private static final double TAIL = (1 - Interval.LEVEL) / 2;

  /** Halvings of a factor between 0 and {@link #MOST}: to a millionth of the range. */
  private static final int HALVINGS = 21;

  /** Noise of less range than the form's own cannot hide more than all of it. */
  private static final double MOST = 2;

  SynchronousMotion {
    noises = List.copyOf(noises);
  }

  /**
   * The range and its doubt. Scatter left in the mean makes a range of its own. The lower end is
   * that of a form of this shape whose range, with such scatter on it, is often as large as what
   * was seen; the upper end takes in, too, that the scatter may have hidden as much as it can show.
   *
   * @param byPosition readings [m] of m ≥ 2 turns at each of n ≥ 4 angles [thousandths of a degree]
   * @return range [m] with an equal-tailed interval; 0 where scatter alone would do
   * @see "ISO 230-7 (from memory); docs/methods/runout.md"
   */
  static Figure of(
      Map<Long, List<Double>> byPosition, RunoutReadings trial, String record, Draws draws) {
    Samples angle =
        Samples.of(byPosition.keySet().stream().map(p -> Math.toRadians(p / 1000.0)).toList());
    Samples mean = Samples.of(byPosition.values().stream().map(r -> Samples.of(r).mean()).toList());
    int turns = byPosition.values().iterator().next().size();
    double squares = squares(byPosition);
    double u = Math.sqrt(squares / turns + alike(squares, trial.indicator().readTo()));
    var circle = new LeastSquares.Design(Curve.rows(angle, List.of(1)));
    Stream stream = draws.stream(record + "/scatter-turns");
    Samples factors = stream.scatterFactors(draws.count(), byPosition.size() * (turns - 1));
    List<Samples> noises =
        factors.stream()
            .mapToObj(f -> Samples.generate(angle.size(), i -> f * u * stream.gaussian()))
            .map(noise -> circle.fit(noise).residuals())
            .toList();
    return new SynchronousMotion(circle.fit(mean).residuals(), noises).figure(trial, record, draws);
  }

  /** Variance of a reading about the mean of its angle, pooled. */
  static double squares(Map<Long, List<Double>> byPosition) {
    double sum = 0;
    for (List<Double> read : byPosition.values()) {
      sum += Math.pow(Samples.of(read).standardDeviation(), 2) / byPosition.size();
    }
    return sum;
  }

  /**
   * Variance of what rounding does alike in every turn: it fades with the scatter that carries the
   * readings over the steps, of which {@code squares} shows what is left.
   */
  static double alike(double squares, double step) {
    double low = 0;
    double high = squares;
    for (int i = 0; i < 2 * HALVINGS; i++) {
      double scatter = (low + high) / 2;
      boolean less = scatter + step * step / 12 - rounding(scatter, step) < squares;
      low = less ? scatter : low;
      high = less ? high : scatter;
    }
    return rounding(low, step);
  }

  private static double rounding(double variance, double step) {
    double phase = 2 * Math.PI / step;
    return Math.exp(-phase * phase * variance) * step * step / 12;
  }

  private Figure figure(RunoutReadings trial, String record, Draws draws) {
    double range = range(0, 1, noises.get(0));
    Samples such = Samples.generate(noises.size(), k -> range * factor(range, noises.get(k)));
    Samples hidden = Samples.generate(noises.size(), k -> range(1, 1, noises.get(k)));
    Map<Cause, Double> effects = new LinkedHashMap<>();
    effects.put(Cause.normal(record, "scatter-turns"), such.standardDeviation());
    if (trial.indicator().limitOfError().isPresent()) {
      double u = trial.indicator().limitOfError().get().over(range) / Math.sqrt(3);
      Cause cause = Cause.rectangular(trial.indicator().record(), "limit-of-error-form");
      Samples moved = cause.draws(draws).map(x -> u * x);
      such = sum(such, moved);
      hidden = sum(hidden, moved);
      effects.put(cause, u);
    }
    return drawn(range, such.map(x -> Math.max(0, x)), hidden, effects);
  }

  private static Samples sum(Samples a, Samples b) {
    return Samples.generate(a.size(), k -> a.get(k) + b.get(k));
  }

  private static Figure drawn(
      double range, Samples such, Samples hidden, Map<Cause, Double> effects) {
    var spread = WeightedSamples.of(such);
    double low = Math.min(range, spread.quantile(TAIL));
    double high =
        Math.max(spread.quantile(1 - TAIL), WeightedSamples.of(hidden).quantile(1 - TAIL));
    var interval = new Interval(low, Math.max(range, high), Interval.LEVEL);
    Samples even = such.map(x -> 1.0 / such.size());
    return Drawn.of(Unit.MICROMETRE, such, even, range, interval, effects);
  }

  /** How many times the form, with this noise on it, has the range that was seen. */
  private double factor(double seen, Samples noise) {
    if (range(1, 0, noise) >= seen) {
      return 0;
    }
    double low = 0;
    double high = MOST;
    for (int i = 0; i < HALVINGS; i++) {
      double times = (low + high) / 2;
      boolean less = range(1, times, noise) < seen;
      low = less ? times : low;
      high = less ? high : times;
    }
    return low;
  }

  private double range(double noisy, double times, Samples noise) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < form.size(); i++) {
      double y = times * form.get(i) + noisy * noise.get(i);
      low = Math.min(low, y);
      high = Math.max(high, y);
    }
    return high - low;
  }
}
