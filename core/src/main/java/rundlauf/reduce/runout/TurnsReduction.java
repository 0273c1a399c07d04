package rundlauf.reduce.runout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import rundlauf.maths.Draws;
import rundlauf.maths.LeastSquares;
import rundlauf.maths.Samples;
import rundlauf.maths.Stream;
import rundlauf.maths.WeightedSamples;
import rundlauf.quantity.Cause;
import rundlauf.quantity.Drawn;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Interval;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.readings.RunoutReadings;

/** Motion in step and out of step with the turning, from several turns at the same angles. */
final class TurnsReduction {
  private static final int FEWEST_POSITIONS = 4;

  /** Of a rectangular cause, half of its 95 % interval. */
  private static final double MOST = 0.95;

  private TurnsReduction() {}

  /** Adds both figures to the form, or why they cannot be had. */
  static Form added(
      Form form,
      RunoutReadings.Sweep sweep,
      RunoutReadings trial,
      double eccentricity,
      String record,
      String about,
      Draws draws) {
    Map<Long, List<Double>> byPosition = byPosition(sweep);
    int turns = byPosition.values().stream().mapToInt(List::size).min().orElse(0);
    if (turns < 2) {
      long more = byPosition.values().stream().filter(r -> r.size() > 1).count();
      Form none = Form.missing(Saying.of(more < 2 ? "one-turn-only" : "turns-not-alike", about));
      return form.withTurns(none.synchronous(), none.asynchronous());
    }
    if (byPosition.size() < FEWEST_POSITIONS) {
      Form none = Form.missing(Saying.of("turns-too-few-positions", about));
      return form.withTurns(none.synchronous(), none.asynchronous());
    }
    byPosition.replaceAll((position, read) -> read.subList(0, turns));
    double angles = eccentricity * trial.angleLimit();
    return form.withTurns(
        synchronous(byPosition, turns, trial, record, draws),
        asynchronous(byPosition, trial, angles, record, draws));
  }

  /** Readings at each angle of the turn, in thousandths of a degree, in the order taken. */
  private static Map<Long, List<Double>> byPosition(RunoutReadings.Sweep sweep) {
    Map<Long, List<Double>> all = new TreeMap<>();
    for (int i = 0; i < sweep.angle().size(); i++) {
      long position = Harmonics.position(sweep.angle().get(i));
      all.computeIfAbsent(position, p -> new ArrayList<>()).add(sweep.reading().get(i));
    }
    return all;
  }

  /**
   * Largest range over the turns at one angle. Rounding moves each end by half a step, a wrongly
   * set angle by what the offset rises there: the interval holds whatever they can have done.
   */
  private static Figure asynchronous(
      Map<Long, List<Double>> byPosition,
      RunoutReadings trial,
      double angles,
      String record,
      Draws draws) {
    double range =
        byPosition.values().stream()
            .mapToDouble(r -> Samples.of(r).max() - Samples.of(r).min())
            .max()
            .orElseThrow();
    Map<Cause, Double> halves = new LinkedHashMap<>();
    double step = trial.indicator().readTo();
    halves.put(Cause.rectangular(record, "rounding-high"), step / 2);
    halves.put(Cause.rectangular(record, "rounding-low"), step / 2);
    halves.put(Cause.rectangular(record, "angle-setting-turns"), 2 * angles);
    double most = step + 2 * angles;
    if (trial.indicator().limitOfError().isPresent()) {
      double limit = trial.indicator().limitOfError().get().over(range);
      halves.put(Cause.rectangular(trial.indicator().record(), "limit-of-error-form"), limit);
      most += MOST * limit;
    }
    return moved(range, halves, most, draws);
  }

  private static Figure moved(double value, Map<Cause, Double> halves, double most, Draws draws) {
    double[] moved = new double[draws.count()];
    Arrays.fill(moved, value);
    Map<Cause, Double> effects = new LinkedHashMap<>();
    halves.forEach(
        (cause, half) -> {
          double u = half / Math.sqrt(3);
          effects.put(cause, u);
          Samples standard = cause.draws(draws);
          for (int i = 0; i < moved.length; i++) {
            moved[i] += u * standard.get(i);
          }
        });
    Samples all = Samples.of(moved).map(Math::abs);
    var interval = new Interval(Math.max(0, value - most), value + most, Interval.LEVEL);
    Samples even = all.map(x -> 1.0 / all.size());
    return Drawn.of(Unit.MICROMETRE, all, even, value, interval, effects);
  }

  /**
   * Range of the mean over turns less its once-a-turn part. Scatter left in the mean makes a range
   * of its own: drawn anew on top of the mean it shows by how much, and is taken back.
   */
  private static Figure synchronous(
      Map<Long, List<Double>> byPosition,
      int turns,
      RunoutReadings trial,
      String record,
      Draws draws) {
    Samples angle =
        Samples.of(byPosition.keySet().stream().map(p -> Math.toRadians(p / 1000.0)).toList());
    Samples mean = Samples.of(byPosition.values().stream().map(r -> Samples.of(r).mean()).toList());
    double squares = 0;
    for (List<Double> read : byPosition.values()) {
      squares += Math.pow(Samples.of(read).standardDeviation(), 2) / byPosition.size();
    }
    double step = trial.indicator().readTo();
    // What rounding does alike in every turn fades with the scatter that carries it over the steps.
    double alike = Math.exp(-4 * Math.PI * Math.PI * squares / (step * step)) * step * step / 12;
    double u = Math.sqrt(squares / turns + alike);
    Samples form = LeastSquares.fit(Curve.rows(angle, List.of(1)), mean).residuals();
    double range = form.max() - form.min();
    Stream stream = draws.stream(record + "/scatter-turns");
    int dof = byPosition.size() * (turns - 1);
    Samples back =
        Samples.generate(draws.count(), i -> 2 * range - again(form, angle, u, dof, stream));
    return synchronous(range, back, trial, record, draws);
  }

  private static double again(Samples form, Samples angle, double u, int dof, Stream stream) {
    Samples noise = stream.students(form.size(), dof);
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < angle.size(); i++) {
      double y = form.get(i) + u * noise.get(i);
      low = Math.min(low, y);
      high = Math.max(high, y);
    }
    return high - low;
  }

  private static Figure synchronous(
      double range, Samples back, RunoutReadings trial, String record, Draws draws) {
    Map<Cause, Double> effects = new LinkedHashMap<>();
    effects.put(Cause.normal(record, "scatter-turns"), back.standardDeviation());
    Samples all = back;
    if (trial.indicator().limitOfError().isPresent()) {
      double u = trial.indicator().limitOfError().get().over(range) / Math.sqrt(3);
      Cause cause = Cause.rectangular(trial.indicator().record(), "limit-of-error-form");
      Samples standard = cause.draws(draws);
      all = Samples.generate(back.size(), i -> back.get(i) + u * standard.get(i));
      effects.put(cause, u);
    }
    Samples positive = all.map(x -> Math.max(0, x));
    var spread = WeightedSamples.of(positive);
    double low = Math.min(range, spread.quantile((1 - Interval.LEVEL) / 2));
    double high = Math.max(range, spread.quantile((1 + Interval.LEVEL) / 2));
    var interval = new Interval(low, high, Interval.LEVEL);
    Samples even = positive.map(x -> 1.0 / positive.size());
    return Drawn.of(Unit.MICROMETRE, positive, even, range, interval, effects);
  }
}
