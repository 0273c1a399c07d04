package rundlauf.render;

import java.math.BigDecimal;
import java.math.RoundingMode;
import rundlauf.report.Scale;

/** Numbers of a series as digits, the same in every locale. */
final class Digits {
  private Digits() {}

  /** A number with the decimals of its scale. */
  static String of(double si, Scale scale) {
    double shown = scale.unit().fromSi(si);
    BigDecimal rounded = new BigDecimal(shown).setScale(scale.decimals(), RoundingMode.HALF_EVEN);
    return rounded.toPlainString();
  }
}
