package rundlauf.render;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import rundlauf.quantity.Unit;
import rundlauf.report.Scale;

/** Numbers as digits, the same in every locale. */
final class Digits {
  /** Two digits of the standard uncertainty, as JCGM 100:2008, 7.2.6 advises. */
  private static final int OF_DOUBT = 2;

  /** What an exact number shows at most. */
  private static final MathContext EXACT = new MathContext(6);

  private Digits() {}

  /** A number of a series. */
  static String of(double si, Scale scale) {
    return fixed(scale.unit().fromSi(si), scale.decimals());
  }

  /**
   * A number with so many decimals.
   *
   * @param decimals negative to round to tens, hundreds, …
   */
  static String fixed(double shown, int decimals) {
    BigDecimal rounded = new BigDecimal(shown).setScale(decimals, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 && decimals <= 0 ? "0" : rounded.toPlainString();
  }

  /** Decimals that show two digits of a doubt {@code u} given in the unit shown. */
  static int decimals(double u) {
    BigDecimal rounded = new BigDecimal(u).round(new MathContext(OF_DOUBT));
    int magnitude = rounded.precision() - rounded.scale() - 1;
    return OF_DOUBT - 1 - magnitude;
  }

  /** A number without doubt. */
  static String exact(double si, Unit unit) {
    return new BigDecimal(unit.fromSi(si)).round(EXACT).stripTrailingZeros().toPlainString();
  }
}
