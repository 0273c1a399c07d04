package rundlauf.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Saying;
import rundlauf.reduce.NormVerdict;
import rundlauf.report.Table.Row;

/** What norms say to a trial, one a row. */
final class VerdictTable {
  private VerdictTable() {}

  /** Empty where no norm speaks. */
  static Optional<Block> of(Sheet sheet, List<NormVerdict> verdicts) {
    if (verdicts.isEmpty()) {
      return Optional.empty();
    }
    List<Row> rows = new ArrayList<>();
    for (NormVerdict verdict : verdicts) {
      rows.add(
          Row.of(
              new Cell.Said(Saying.of("report-norm", "", Arg.of(verdict.norm()))),
              new Cell.Typed(verdict.about()),
              limit(verdict.limit()),
              RunoutPart.brief(sheet, verdict.figure()),
              new Cell.Said(
                  Saying.of("report-outcome", "", Arg.term("norm-" + verdict.outcome().code()))),
              new Cell.SaidAll(verdict.said())));
    }
    List<Cell> columns =
        List.of(
            Table.heading("report-column-norm"),
            Table.heading("report-column-about"),
            Table.heading("report-column-norm-limit"),
            Table.heading("report-column-norm-figure"),
            Table.heading("report-column-verdict"),
            Table.heading("report-column-norm-words"));
    return Optional.of(
        Table.of(Saying.of("report-norms-caption", ""), columns, rows, Table.Kind.FIGURES));
  }

  private static Cell limit(Figure limit) {
    return limit.known()
        ? new Cell.Said(Saying.of("report-at-most", "", Arg.about(limit.value(), limit.unit())))
        : new Cell.Blank();
  }
}
