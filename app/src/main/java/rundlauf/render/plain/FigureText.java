package rundlauf.render.plain;

import rundlauf.quantity.Format;
import rundlauf.quantity.Shown;
import rundlauf.quantity.Unit;

/**
 * A known figure in honest digits: as many decimals as its standard uncertainty bears with two
 * significant digits (JCGM 100:2008, 7.2.6).
 */
final class FigureText {
  private FigureText() {}

  /** Such as {@code 97.4 µm (93.6 to 105.0)}; without doubt only {@code 97.4 µm}. */
  static String of(Shown figure) {
    String value = value(figure) + unit(figure.unit());
    return figure.low() == figure.high() ? value : value + " " + range(figure);
  }

  /** The value alone, without its unit. */
  static String value(Shown figure) {
    return Format.rounded(figure.value(), figure.u());
  }

  /** The coverage interval in brackets, to the same place as the value. */
  static String range(Shown figure) {
    String low = Format.rounded(figure.low(), figure.u());
    return "(" + low + " to " + Format.rounded(figure.high(), figure.u()) + ")";
  }

  /** The unit as a workshop writes it, with the gap before it. */
  static String unit(Unit unit) {
    return switch (unit) {
      case ONE -> "";
      case DEGREE -> "°";
      default -> " " + unit.printed();
    };
  }
}
