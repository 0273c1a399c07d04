package rundlauf.reduce.runout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import rundlauf.maths.Draws;
import rundlauf.maths.Samples;
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

  /**
   * Scatter of a hand that reads, in steps, that may pass for motion: our choice, half of what a
   * hurried one does.
   */
  private static final double HAND = 0.3;

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
        SynchronousMotion.of(byPosition, trial, record, draws),
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
   * set angle by what the offset rises there: the interval holds whatever they can have done. What
   * a hand scatters in reading cannot be told from motion and takes the low end down.
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
    double scatter = HAND * step;
    double squares = SynchronousMotion.squares(byPosition);
    double motion = Math.sqrt(Math.max(0, 1 - scatter * scatter / squares));
    return moved(range, halves, new double[] {range * motion - most, range + most}, draws);
  }

  private static Figure moved(double value, Map<Cause, Double> halves, double[] ends, Draws draws) {
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
    var interval = new Interval(Math.max(0, ends[0]), ends[1], Interval.LEVEL);
    Samples even = all.map(x -> 1.0 / all.size());
    return Drawn.of(Unit.MICROMETRE, all, even, value, interval, effects);
  }
}
