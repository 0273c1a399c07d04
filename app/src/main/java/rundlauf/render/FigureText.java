package rundlauf.render;

import java.util.Optional;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Format;
import rundlauf.quantity.Shown;
import rundlauf.quantity.Unit;

/**
 * A known figure as text.
 *
 * @param value with its unit
 * @param interval without unit; empty when the figure is exact
 */
record FigureText(String value, Optional<FigureText.Ends> interval) {
  /** Both ends of an interval. */
  record Ends(String low, String high) {}

  /** A doubt this small beside its value is the rounding of the arithmetic. */
  private static final double NO_DOUBT = 1e-9;

  private static final String NO_BREAK = "\u00a0";

  static FigureText of(Figure figure) {
    Shown shown = Shown.of(figure).orElseThrow();
    double widest = Math.max(shown.u(), shown.high() - shown.low());
    if (widest <= NO_DOUBT * Math.abs(shown.value())) {
      return new FigureText(withUnit(Format.number(shown.value()), shown.unit()), Optional.empty());
    }
    double u = shown.u() > 0 ? shown.u() : widest;
    return new FigureText(
        withUnit(Format.rounded(shown.value(), u), shown.unit()),
        Optional.of(new Ends(Format.rounded(shown.low(), u), Format.rounded(shown.high(), u))));
  }

  static String withUnit(String digits, Unit unit) {
    String symbol = symbol(unit);
    String gap = symbol.isEmpty() || symbol.equals("°") ? "" : NO_BREAK;
    return digits + gap + symbol;
  }

  /** As the shop writes it: µm, not um. */
  static String symbol(Unit unit) {
    if (unit == Unit.ONE) {
      return "";
    }
    return unit == Unit.DEGREE ? "°" : unit.printed();
  }
}
