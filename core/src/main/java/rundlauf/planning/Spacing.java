package rundlauf.planning;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import rundlauf.maths.Samples;
import rundlauf.quantity.Unit;

/** Values spread evenly in the logarithm, such as can be set. */
final class Spacing {
  /** Digits that a setting is rounded to, downward. */
  private static final MathContext DIGITS = new MathContext(3, RoundingMode.DOWN);

  private static final double ROUNDING = 1e-9;

  private Spacing() {}

  /**
   * From {@code low} to {@code high}, both over 0, rising; the one in which {@code high} lies alone
   * where they are the wrong way round.
   *
   * @param unit in which a setting has three digits at most; never below {@code low}
   */
  static Samples between(double low, double high, int count, Unit unit) {
    if (low >= high) {
      return Samples.generate(1, i -> high);
    }
    return Samples.generate(
        count, i -> settable(low * Math.pow(high / low, (double) i / (count - 1)), low, unit));
  }

  private static double settable(double value, double low, Unit unit) {
    double shown = unit.fromSi(value) * (1 + ROUNDING);
    double rounded = unit.toSi(new BigDecimal(shown).round(DIGITS).doubleValue());
    return Math.max(low, rounded);
  }
}
