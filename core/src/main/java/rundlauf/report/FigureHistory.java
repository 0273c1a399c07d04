package rundlauf.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.report.Table.Row;

/** A figure trial by trial, each with its interval, as a chart. */
final class FigureHistory {
  private FigureHistory() {}

  /**
   * The chart; empty where fewer than two of the trials know the figure.
   *
   * @param sheets of trials that have the figure, the oldest first
   */
  static Optional<Chart> chart(List<Sheet> sheets, String path) {
    List<HistoryChart.Moment> moments = new ArrayList<>();
    List<Row> rows = new ArrayList<>();
    Unit unit = Unit.ONE;
    for (Sheet sheet : sheets) {
      Figure figure = FigurePart.figure(sheet, path).orElseThrow();
      Optional<Figure.Estimate> estimate = figure.estimate();
      if (estimate.isPresent()) {
        unit = figure.unit();
        var interval = estimate.get().interval();
        moments.add(
            new HistoryChart.Moment(sheet.date(), figure.value(), interval.low(), interval.high()));
        rows.add(Row.of(new Cell.Typed(sheet.date()), sheet.shown(figure)));
      }
    }
    return moments.size() < 2 ? Optional.empty() : Optional.of(chart(moments, rows, unit));
  }

  private static Chart chart(List<HistoryChart.Moment> moments, List<Row> rows, Unit unit) {
    double widest = 0;
    for (HistoryChart.Moment moment : moments) {
      widest = Math.max(widest, moment.high() - moment.low());
    }
    List<Cell> columns =
        List.of(Table.heading("report-column-date"), Table.heading("report-column-value"));
    Saying caption = Saying.of("report-history-chart", "");
    return new HistoryChart(
        "chart-history",
        caption,
        Saying.of("report-history-summary", ""),
        Scale.uncertainty(unit, widest),
        moments,
        Table.of(caption, columns, rows, Table.Kind.READINGS));
  }
}
