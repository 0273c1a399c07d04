package rundlauf.wire;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import rundlauf.quantity.Cause;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Saying;

/**
 * What one cause contributes to one figure.
 *
 * @param of the figure's path in the document
 * @param u the cause's standard uncertainty, SI
 * @param share of the sum of all squares, 0 to 1
 */
record BudgetLine(String of, Figure figure, Cause cause, double u, double share) {

  /** The budgets of all figures in their order, each with its largest cause first. */
  static List<BudgetLine> of(Map<String, Figure> figures) {
    List<BudgetLine> lines = new ArrayList<>();
    figures.forEach(
        (path, figure) -> {
          double squares = 0;
          for (var share : figure.budget()) {
            squares += share.u() * share.u();
          }
          for (var share : figure.budget()) {
            if (share.u() > 0) {
              double part = share.u() * share.u() / squares;
              lines.add(new BudgetLine(path, figure, share.cause(), share.u(), part));
            }
          }
        });
    return lines;
  }

  void write(JsonLine json) {
    json.text("of", of);
    json.text("cause", cause.id());
    json.why("text", Saying.of("term." + cause.part(), ""));
    json.number("u", figure.unit().fromSi(u));
    json.text("unit", figure.unit().symbol());
    json.number("share", share);
  }
}
