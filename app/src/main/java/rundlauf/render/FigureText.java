package rundlauf.render;

import java.util.Optional;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Figure.Estimate;
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

  private static final double TURN = 360;
  private static final String NO_BREAK = "\u00a0";

  static FigureText of(Figure figure) {
    Estimate e = figure.estimate().orElseThrow();
    Unit unit = figure.unit();
    double widest = Math.max(e.u(), e.interval().high() - e.interval().low());
    if (widest <= NO_DOUBT * Math.abs(e.value())) {
      return new FigureText(withUnit(Digits.exact(e.value(), unit), unit), Optional.empty());
    }
    int decimals = Digits.decimals(unit.fromSi(e.u() > 0 ? e.u() : widest));
    double turns = turns(e.value(), unit);
    return new FigureText(
        withUnit(Digits.fixed(unit.fromSi(e.value()) - turns, decimals), unit),
        Optional.of(
            new Ends(
                Digits.fixed(unit.fromSi(e.interval().low()) - turns, decimals),
                Digits.fixed(unit.fromSi(e.interval().high()) - turns, decimals))));
  }

  /** Degrees to take off so that the value lies within one turn; its interval goes along. */
  private static double turns(double si, Unit unit) {
    return unit == Unit.DEGREE ? TURN * Math.floor(unit.fromSi(si) / TURN) : 0;
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
    return unit == Unit.DEGREE ? "°" : unit.symbol().replace("um", "µm");
  }
}
