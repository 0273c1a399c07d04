package rundlauf.reduce.speed;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import rundlauf.maths.Distributions;
import rundlauf.maths.Draws;
import rundlauf.maths.Samples;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Cause;
import rundlauf.quantity.Drawn;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Interval;
import rundlauf.quantity.Measured;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.readings.SpeedReadings;
import rundlauf.readings.SpeedReadings.Point;

/** Where the curve begins and where it no longer rises: each known only to lie between settings. */
final class SpeedEnds {
  /** A rise under this share of what the slope below promises is none; our choice. */
  private static final double NO_RISE = 0.05;

  /** The rise promised must be this many times what the doubt would hide; our choice. */
  private static final double PLAIN = 2;

  private SpeedEnds() {}

  /** Between the highest setting that did not turn and the lowest that did. */
  static Figure deadBelow(SpeedReadings readings, Unit unit, Draws draws) {
    double still = furthest(readings, false);
    double turned = furthest(readings, true);
    if (Double.isInfinite(still)) {
      return new Missing(
          unit, Saying.of("speed-always-turned", "deadBelow", Arg.of(unit.toSi(turned), unit)));
    }
    String file = readings.head().name();
    return between(
        Math.min(still, turned), Math.max(still, turned), file, "dead-band", unit, draws);
  }

  /** Highest setting that stood still, or lowest that turned. */
  private static double furthest(SpeedReadings readings, boolean turning) {
    Samples settings =
        Samples.of(
            readings.points().stream()
                .filter(p -> p.speed() > 0 == turning)
                .map(Point::setting)
                .toList());
    if (settings.size() == 0) {
      return Double.NEGATIVE_INFINITY;
    }
    return turning ? settings.min() : settings.max();
  }

  /** Between the first setting of the flat top and the one before it. */
  static Figure saturatesAbove(SpeedCurve curve, String file, Unit unit, Draws draws) {
    for (int i = 1; i < curve.levels().size() - 1; i++) {
      if (flatFrom(curve, i)) {
        double low = curve.settings().get(i - 1);
        return between(low, curve.settings().get(i), file, "saturation", unit, draws);
      }
    }
    return new Missing(unit, Saying.of("speed-still-rising", "saturatesAbove"));
  }

  private static boolean flatFrom(SpeedCurve curve, int i) {
    int last = curve.levels().size() - 1;
    Samples settings = curve.settings();
    Samples speeds = curve.speeds();
    double below = (speeds.get(i) - speeds.get(0)) / (settings.get(i) - settings.get(0));
    double promised = below * (settings.get(last) - settings.get(i));
    double hidden = doubtOfRise(curve.levels().get(i), curve.levels().get(last));
    double rise = speeds.get(last) - speeds.get(i);
    return promised > PLAIN * hidden && rise <= Math.max(hidden, NO_RISE * promised);
  }

  /** Half-width of the 95 % interval of the rise from one level to another. */
  static double doubtOfRise(SpeedLevels.Level from, SpeedLevels.Level to) {
    Measured rise = to.speed().minus(from.speed());
    double dof = Math.min(from.speed().dof(), to.speed().dof());
    return rise.u() == 0 ? 0 : Distributions.coverageFactor(Interval.LEVEL, dof) * rise.u();
  }

  private static Figure between(
      double low, double high, String file, String part, Unit unit, Draws draws) {
    double middle = unit.toSi((low + high) / 2);
    double half = unit.toSi((high - low) / 2);
    if (half == 0) {
      return Measured.exact(middle, unit);
    }
    Cause cause = Cause.rectangular(file, part);
    double effect = half / Math.sqrt(3);
    Samples all = cause.draws(draws).map(x -> middle + effect * x);
    Samples even = Samples.generate(draws.count(), k -> 1.0);
    var ends = new Interval(unit.toSi(low), unit.toSi(high), Interval.LEVEL);
    return Drawn.of(unit, all, even, middle, ends, Map.of(cause, effect));
  }

  /** Settings at which the speed falls by more than the doubt. */
  static List<Saying> falls(SpeedCurve curve, Unit unit) {
    List<SpeedLevels.Level> levels = curve.levels();
    List<Saying> sayings = new ArrayList<>();
    for (int i = 1; i < levels.size(); i++) {
      SpeedLevels.Level from = levels.get(i - 1);
      SpeedLevels.Level to = levels.get(i);
      if (from.speed().value() - to.speed().value() > doubtOfRise(from, to)) {
        sayings.add(
            Saying.of(
                "speed-falls",
                "curve",
                Arg.of(unit.toSi(from.setting()), unit),
                Arg.of(from.speed().value(), Unit.RPM),
                Arg.of(unit.toSi(to.setting()), unit),
                Arg.of(to.speed().value(), Unit.RPM)));
      }
    }
    return sayings;
  }
}
