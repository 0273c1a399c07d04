package rundlauf.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.reduce.sideload.Shares;
import rundlauf.report.ShareBars.Bar;
import rundlauf.report.Table.Row;

/** The joints' shares as bars. */
final class SharesChart {
  private static final Scale SHARE = new Scale(Unit.PERCENT, 0);

  private SharesChart() {}

  /** Nothing where nothing is shared out, or a share is not known. */
  static Optional<Chart> of(Sheet sheet, Shares shares) {
    if (shares.entries().isEmpty() || !shares.entries().stream().allMatch(s -> s.share().known())) {
      return Optional.empty();
    }
    List<Bar> bars = shares.entries().stream().map(SharesChart::bar).toList();
    Saying caption = Saying.of("report-shares", "");
    boolean bounded = bars.stream().anyMatch(bar -> bar.bound().isPresent());
    Saying summary =
        bounded
            ? Saying.of("report-shares-bounded-summary", "")
            : Saying.of("report-shares-summary", "");
    return Optional.of(
        new ShareBars(sheet.chart("shares"), caption, summary, SHARE, bars, twin(caption, bars)));
  }

  private static Bar bar(Shares.Share share) {
    Figure.Estimate estimate = share.share().estimate().orElseThrow();
    return new Bar(
        SharesTable.joint(share),
        estimate.value(),
        estimate.interval().low(),
        estimate.interval().high(),
        share.bound());
  }

  private static Table twin(Saying caption, List<Bar> bars) {
    List<Row> rows = new ArrayList<>();
    for (Bar bar : bars) {
      rows.add(
          Row.of(
              new Cell.Said(bar.name()),
              bar.bound().<Cell>map(SharesTable::bound).orElseGet(Cell.Blank::new),
              new Cell.Number(bar.share(), SHARE),
              new Cell.Number(bar.low(), SHARE),
              new Cell.Number(bar.high(), SHARE)));
    }
    List<Cell> columns = new ArrayList<>();
    for (String name : List.of("joint", "bound", "share", "from", "to")) {
      columns.add(Table.heading("report-column-" + name));
    }
    return Table.of(caption, columns, rows, Table.Kind.READINGS);
  }
}
