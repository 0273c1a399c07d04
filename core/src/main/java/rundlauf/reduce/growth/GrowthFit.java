package rundlauf.reduce.growth;

import java.util.LinkedHashMap;
import java.util.Map;
import rundlauf.maths.CoarseRise;
import rundlauf.maths.Draws;
import rundlauf.maths.RiseFit;
import rundlauf.maths.Samples;
import rundlauf.maths.WeightedSamples;
import rundlauf.quantity.Cause;
import rundlauf.quantity.Drawn;
import rundlauf.quantity.Interval;
import rundlauf.quantity.Unit;
import rundlauf.readings.GrowthReadings;
import rundlauf.readings.GrowthReadings.Point;

/**
 * Draws of the curve, and what the readings can tell of it.
 *
 * @param curve of the readings alone
 * @param seen growth from the first reading to the last, with what the dial adds [m]
 */
record GrowthFit(GrowthReadings readings, CoarseRise curve, Drawn seen, Draws draws) {
  /** Time constants down to this share of the first gap are held possible; our choice. */
  static final double SHORTEST = 0.2;

  /** Time constants up to so many spans of the readings are held possible; our choice. */
  static final double LONGEST = 10;

  /**
   * A curve whose time constant may be longer than so many spans has not begun to bend: less than
   * three tenths of its growth were seen; our choice.
   */
  private static final double BENT = 3;

  /** What the probability of that may be for a time constant to be told; our choice. */
  private static final double UNBENT = 0.01;

  /**
   * A growth that is not told from 0 with 99 % may have a curve of the readings' scatter and not of
   * its own; our choice.
   */
  private static final double FAINT = 0.005;

  /**
   * A time constant is told only of curves that bend, and scatter makes some bend that do not yet:
   * without this share of the width of its logarithm the intervals held the truth in 89 to 94 %
   * where less than half of the trials bent. Our choice, by the table in docs/methods/growth.md.
   */
  private static final double CHOSEN_EXCESS = 0.2;

  /** Time constants this near to the shortest held possible cannot be told from none. */
  private static final double NEAR_SHORTEST = 1.5;

  private static final double TAIL = (1 - Interval.LEVEL) / 2;

  static GrowthFit of(GrowthReadings readings, Draws draws) {
    Samples times = times(readings);
    String file = readings.head().name();
    CoarseRise curve =
        CoarseRise.posterior(
            times,
            Samples.of(readings.points().stream().map(Point::reading).toList()),
            readings.indicator().readTo(),
            shortest(times),
            LONGEST * readings.span(),
            draws.count(),
            draws.stream(file + "/readings"));
    Drawn own = own(file, curve.rise(), Unit.MICROMETRE);
    return new GrowthFit(readings, curve, withDial(readings, own, draws), draws);
  }

  private static Drawn withDial(GrowthReadings readings, Drawn own, Draws draws) {
    Samples all = Samples.of(readings.points().stream().map(Point::reading).toList());
    return Drawn.through(
        v -> (v[0] + v[1]) * v[2],
        Unit.MICROMETRE,
        draws,
        own,
        readings.indicator().error(readings.head().name(), all.max() - all.min(), 1),
        readings.indicator().scale());
  }

  private static Samples times(GrowthReadings readings) {
    return Samples.of(readings.points().stream().map(p -> p.time() - readings.start()).toList());
  }

  private static double shortest(Samples times) {
    return SHORTEST * times.stream().filter(t -> t > 0).min().orElseThrow();
  }

  private static Drawn own(String record, Samples all, Unit unit) {
    Map<Cause, Double> effects = new LinkedHashMap<>();
    double u = WeightedSamples.of(all).standardDeviation();
    effects.put(Cause.normal(record, "scatter"), u);
    return Drawn.of(unit, all, effects);
  }

  /** Whether 0 is excluded of what was seen. */
  boolean grew() {
    return !seen.estimate().orElseThrow().interval().holds(0);
  }

  /** Whether it is so far from 0 that its curve can be timed. */
  boolean timed() {
    var spread = WeightedSamples.of(seen.draws(draws));
    return spread.quantile(FAINT) > 0 || spread.quantile(1 - FAINT) < 0;
  }

  /** Whether the time constant has an upper end. */
  boolean bent() {
    double limit = BENT * readings.span();
    return WeightedSamples.of(curve.timeConstant()).above(limit) <= UNBENT;
  }

  /** Growth from the start until it ends, by draws that may reach far where no bend was seen. */
  Drawn total() {
    double span = readings.span();
    Samples gone = seen.draws(draws);
    Samples all =
        Samples.generate(
            draws.count(), k -> gone.get(k) / -Math.expm1(-span / curve.timeConstant().get(k)));
    double value = WeightedSamples.of(all).quantile(0.5);
    double by = value / seen.value();
    Map<Cause, Double> effects = new LinkedHashMap<>();
    seen.effects().forEach((cause, effect) -> effects.put(cause, by * effect));
    return Drawn.of(Unit.MICROMETRE, all, effects);
  }

  /** From what was seen on: the nearer end is that of what was seen. */
  Drawn atLeast() {
    Interval near = seen.estimate().orElseThrow().interval();
    Interval far = total().estimate().orElseThrow().interval();
    Interval from =
        seen.value() > 0
            ? new Interval(near.low(), Math.max(near.high(), far.high()), Interval.LEVEL)
            : new Interval(Math.min(near.low(), far.low()), near.high(), Interval.LEVEL);
    return Drawn.of(
        Unit.MICROMETRE, seen.draws(draws), seen.weights(), seen.value(), from, seen.effects());
  }

  /** The time constant times a number [s]; its interval begins at 0 where 0 is not excluded. */
  Drawn timeConstant(double times, String part) {
    double middle = WeightedSamples.of(curve.timeConstant()).quantile(0.5);
    Samples wider = curve.timeConstant().map(t -> times * t * Math.pow(t / middle, CHOSEN_EXCESS));
    Drawn found = own(readings.head().name() + part, wider, Unit.MINUTE);
    double shortest = times * NEAR_SHORTEST * shortest(times(readings));
    return found.estimate().orElseThrow().interval().low() < shortest ? found.fromZero() : found;
  }

  /** How much is still to come at the last reading, in size [m]. */
  Drawn left() {
    Samples all =
        Samples.generate(
            draws.count(),
            k -> {
              double after = readings.span() / curve.timeConstant().get(k);
              return Math.abs(curve.rise().get(k)) / Math.expm1(after);
            });
    return own(readings.head().name() + " left", all, Unit.MICROMETRE);
  }

  /** Growth between two times [m], of what was seen. */
  Drawn between(double from, double to) {
    double span = readings.span();
    Samples gone = seen.draws(draws);
    Samples all =
        Samples.generate(
            draws.count(),
            k -> {
              double tau = curve.timeConstant().get(k);
              double begun = RiseFit.share(from - readings.start(), span, tau);
              double done = RiseFit.share(to - readings.start(), span, tau);
              return gone.get(k) * (done - begun);
            });
    return own(readings.head().name() + " warmth", all, Unit.MICROMETRE);
  }
}
