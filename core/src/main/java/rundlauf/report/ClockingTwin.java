package rundlauf.report;

import java.util.ArrayList;
import java.util.List;
import rundlauf.quantity.Saying;
import rundlauf.report.ClockingDial.Arrow;
import rundlauf.report.ClockingDial.Mark;
import rundlauf.report.Table.Row;

/** What a clocking dial shows, as a table: marks first, then what the parts add. */
final class ClockingTwin {
  private ClockingTwin() {}

  static Table of(
      Saying caption,
      List<Mark> marks,
      List<Arrow> arrows,
      Arrow together,
      double within,
      Scale length) {
    List<Row> rows = new ArrayList<>();
    for (Mark mark : marks) {
      rows.add(
          Row.of(
              new Cell.Said(mark.name()),
              new Cell.Blank(),
              new Cell.Number(mark.angle(), ClockingDials.ANGLE)));
    }
    arrows.forEach(arrow -> rows.add(row(arrow, length)));
    rows.add(row(together, length));
    rows.add(
        Row.of(
            new Cell.Said(Saying.of("report-clocking-within", "")),
            new Cell.Number(within, length),
            new Cell.Blank()));
    List<Cell> columns =
        List.of(
            Table.heading("report-column-shown"),
            Table.heading("report-column-off-axis"),
            Table.heading("report-column-forward"));
    return Table.of(caption, columns, rows, Table.Kind.READINGS);
  }

  private static Row row(Arrow arrow, Scale length) {
    Cell angle =
        arrow.told()
            ? new Cell.Number(arrow.angle(), ClockingDials.ANGLE)
            : new Cell.Said(Saying.of("report-direction-not-told", ""));
    return Row.of(new Cell.Said(arrow.name()), new Cell.Number(arrow.length(), length), angle);
  }
}
