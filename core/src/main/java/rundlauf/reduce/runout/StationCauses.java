package rundlauf.reduce.runout;

import java.util.LinkedHashMap;
import java.util.Map;
import rundlauf.maths.Draws;
import rundlauf.maths.Samples;
import rundlauf.quantity.Cause;
import rundlauf.quantity.DrawnVector;
import rundlauf.quantity.DrawnVector.Effect;
import rundlauf.quantity.Quantity;
import rundlauf.readings.IndicatorLimits;

/** The causes of doubt of one station's vector, each with its effect along and across. */
final class StationCauses {
  private StationCauses() {}

  /** E = a1 + i b1 of a fitted sweep with the doubt of its readings and of the dial. */
  static DrawnVector vector(
      StationFit fit, IndicatorLimits dial, String record, double span, Draws draws) {
    Samples a = fit.posterior().coefficient(1);
    Samples b = fit.posterior().coefficient(2);
    double direction = Math.atan2(b.mean(), a.mean());
    double size = Math.hypot(a.mean(), b.mean());
    Map<Cause, Effect> effects = new LinkedHashMap<>();
    ofReadings(effects, fit, dial.readTo(), record, direction, "along");
    ofReadings(effects, fit, dial.readTo(), record, direction + Math.PI / 2, "across");
    DrawnVector read = new DrawnVector(a, b, effects);
    return withDial(read, dial, record, direction, size, span, draws);
  }

  /**
   * Splits the posterior's spread: angle setting and rounding as far as it reaches, scatter the
   * rest.
   */
  private static void ofReadings(
      Map<Cause, Effect> effects,
      StationFit fit,
      double step,
      String record,
      double direction,
      String sense) {
    double left = Math.pow(fit.spread(direction), 2);
    double angles = Math.min(left, Math.pow(fit.propagated(fit.angleSd(), direction), 2));
    left -= angles;
    Samples rounded = fit.angleSd().map(x -> step / Math.sqrt(12));
    double rounding = Math.min(left, Math.pow(fit.propagated(rounded, direction), 2));
    left -= rounding;
    put(effects, record, "angle-setting-" + sense, Math.sqrt(angles), direction);
    put(effects, record, "rounding-" + sense, Math.sqrt(rounding), direction);
    put(effects, record, "scatter-" + sense, Math.sqrt(left), direction);
  }

  private static void put(
      Map<Cause, Effect> effects, String record, String part, double u, double direction) {
    effects.put(
        Cause.normal(record, part), new Effect(u * Math.cos(direction), u * Math.sin(direction)));
  }

  private static DrawnVector withDial(
      DrawnVector read,
      IndicatorLimits dial,
      String record,
      double direction,
      double size,
      double span,
      Draws draws) {
    DrawnVector vector = read;
    if (dial.limitOfError().isPresent()) {
      double half = dial.limitOfError().get().over(span) / 2;
      vector = moved(vector, dial.record(), "limit-of-error", half, direction, draws);
    }
    if (dial.hysteresis().isPresent()) {
      double retrace = dial.hysteresis().getAsDouble();
      double along = DialLag.along(retrace, size);
      vector = moved(vector, record, "retrace-along", along, direction, draws);
      vector =
          moved(
              vector,
              record,
              "retrace-across",
              DialLag.across(retrace),
              direction + Math.PI / 2,
              draws);
    }
    if (dial.angle().filter(Quantity::hasLimits).isPresent()) {
      Quantity angle = dial.angle().get();
      double half = size * Math.tan(Math.abs(angle.si())) * angle.halfWidth();
      vector = moved(vector, dial.record(), "plunger-angle", half, direction, draws);
    }
    return vector;
  }

  /** Adds a rectangular cause of half-width {@code half} at {@code direction}. */
  private static DrawnVector moved(
      DrawnVector vector, String record, String part, double half, double direction, Draws draws) {
    Cause cause = Cause.rectangular(record, part);
    double u = half / Math.sqrt(3);
    return vector.moved(
        cause, new Effect(u * Math.cos(direction), u * Math.sin(direction)), cause.draws(draws));
  }
}
