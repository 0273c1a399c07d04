package rundlauf.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Prints numbers and amounts, the same in every locale. */
public final class Format {
  /** Digits of a number that comes without its doubt; our choice, enough for 24 000 rpm. */
  private static final int DIGITS = 5;

  /** Digits of a number whose doubt is told elsewhere; our choice. */
  private static final int ABOUT = 3;

  private Format() {}

  /** A number to five significant digits, without useless zeros. */
  public static String number(double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("number to print: " + value);
    }
    return plain(new BigDecimal(value).round(new MathContext(DIGITS, RoundingMode.HALF_EVEN)));
  }

  /** An amount in its unit, such as {@code 0.01 mm}; {@code si} in SI. */
  public static String amount(double si, Unit unit) {
    String number = number(unit.fromSi(si));
    return unit == Unit.ONE ? number : number + " " + unit.printed();
  }

  /** An amount worked out roughly, to three significant digits; whole numbers keep theirs. */
  public static String about(double si, Unit unit) {
    double value = unit.fromSi(si);
    var rounded = new BigDecimal(value).round(new MathContext(ABOUT, RoundingMode.HALF_EVEN));
    double shown = Math.abs(value) < 1000 ? rounded.doubleValue() : Math.rint(value);
    return amount(unit.toSi(shown), unit);
  }

  /**
   * A value to the place where its doubt has two significant digits (JCGM 100:2008, 7.2.6).
   *
   * @param value in the unit printed
   * @param u standard uncertainty in the same unit, 0 or more
   */
  public static String rounded(double value, double u) {
    if (u == 0 || !Double.isFinite(u)) {
      return number(value);
    }
    int lastPlace = (int) Math.floor(Math.log10(u)) - 1;
    BigDecimal rounded = new BigDecimal(value).setScale(-lastPlace, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? rounded.abs().toPlainString() : rounded.toPlainString();
  }

  /** A quantity as it may be typed, every digit kept: {@code 60 ± 0.5 mm}. */
  public static String typed(Quantity quantity) {
    String value = exact(quantity.unit().fromSi(quantity.si()));
    String half =
        quantity.hasLimits() ? " ± " + exact(quantity.unit().fromSi(quantity.halfWidth())) : "";
    String unit = quantity.unit() == Unit.ONE ? "" : " " + quantity.unit().symbol();
    return value + half + unit;
  }

  private static String exact(double value) {
    return plain(new BigDecimal(Double.toString(value)));
  }

  private static String plain(BigDecimal value) {
    BigDecimal shortest = value.signum() == 0 ? BigDecimal.ZERO : value.stripTrailingZeros();
    int magnitude = shortest.precision() - shortest.scale();
    return magnitude > 9 || magnitude < -6 ? shortest.toString() : shortest.toPlainString();
  }
}
