package rundlauf.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.report.Table.Row;

/** What the doubt of a figure is made of, as bars. */
final class BudgetChart {
  private static final Scale SHARE = new Scale(Unit.PERCENT, 0);

  private BudgetChart() {}

  /**
   * The budget of a figure; empty when the figure is missing or exact.
   *
   * @param name ends the chart's id
   * @param caption what it is the budget of
   */
  static Optional<Chart> of(Sheet sheet, String name, Saying caption, Figure figure) {
    List<Chart.Bar> bars =
        sheet.causes(figure).stream().map(c -> new Chart.Bar(c.name(), c.u(), c.share())).toList();
    if (bars.isEmpty()) {
      return Optional.empty();
    }
    Scale u = Scale.uncertainty(figure.unit(), bars.get(0).u());
    Saying summary = Saying.of("report-budget-summary", "");
    Table twin = twin(caption, bars, u);
    return Optional.of(
        new Chart.Budget(sheet.chart("budget-" + name), caption, summary, u, SHARE, bars, twin));
  }

  private static Table twin(Saying caption, List<Chart.Bar> bars, Scale u) {
    List<Row> rows = new ArrayList<>();
    for (Chart.Bar bar : bars) {
      rows.add(
          Row.of(
              new Cell.Said(bar.name()),
              new Cell.Number(bar.u(), u),
              new Cell.Number(bar.share(), SHARE)));
    }
    List<Cell> columns = new ArrayList<>();
    for (String name : List.of("cause", "u", "share")) {
      columns.add(Table.heading("report-column-" + name));
    }
    return Table.of(caption, columns, rows, Table.Kind.READINGS);
  }
}
