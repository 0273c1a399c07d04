package rundlauf.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Saying;
import rundlauf.reduce.sideload.Shares;
import rundlauf.reduce.sideload.Shares.Share;
import rundlauf.report.Table.Row;

/** Who gives way, joint by joint. */
final class SharesTable {
  private SharesTable() {}

  /** Nothing where nothing is shared out. */
  static Optional<Block> of(Sheet sheet, Shares shares) {
    if (shares.entries().isEmpty()) {
      return Optional.empty();
    }
    List<Row> rows = new ArrayList<>();
    for (Share share : shares.entries()) {
      rows.add(
          Row.of(
              new Cell.Said(joint(share)),
              share.bound().<Cell>map(SharesTable::bound).orElseGet(Cell.Blank::new),
              RunoutPart.brief(sheet, share.share()),
              RunoutPart.brief(sheet, share.compliance())));
    }
    List<Cell> columns =
        List.of(
            Table.heading("report-column-joint"),
            Table.heading("report-column-bound"),
            Table.heading("figure.shares.share"),
            Table.heading("figure.shares.compliance"));
    return Optional.of(
        Table.of(Saying.of("report-shares-caption", ""), columns, rows, Table.Kind.FIGURES));
  }

  static Saying joint(Share share) {
    return share.joint().equals("shank")
        ? Saying.of("label-own-bending", "")
        : Saying.of("report-part", "", Arg.of(share.joint()));
  }

  static Cell bound(Shares.Bound bound) {
    return switch (bound) {
      case AT_LEAST -> new Cell.Said(Saying.of("bound-at-least", ""));
      case AT_MOST -> new Cell.Said(Saying.of("bound-at-most", ""));
    };
  }
}
