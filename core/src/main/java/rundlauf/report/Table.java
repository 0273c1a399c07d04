package rundlauf.report;

import java.util.List;
import rundlauf.quantity.Saying;

/**
 * A table; the first cell of every row names the row.
 *
 * @param caption what it shows
 * @param columns headings, one for each cell of a row
 * @param kind how it is to be read
 * @param folded whether only its caption is shown until it is asked for
 */
public record Table(Saying caption, List<Cell> columns, List<Row> rows, Kind kind, boolean folded)
    implements Block {
  /** How a table is read. */
  public enum Kind {
    /** A few rows, read across: one row may become a card of its own on a narrow page. */
    FIGURES,
    /** Many short rows of numbers or of what was typed. */
    READINGS
  }

  /**
   * A row.
   *
   * @param id unique in its report, or empty
   */
  public record Row(String id, List<Cell> cells) {
    public Row {
      cells = List.copyOf(cells);
    }

    static Row of(Cell... cells) {
      return new Row("", List.of(cells));
    }
  }

  /** An open table. */
  static Table of(Saying caption, List<Cell> columns, List<Row> rows, Kind kind) {
    return new Table(caption, columns, rows, kind, false);
  }

  /** A heading in our own words. */
  static Cell heading(String code) {
    return new Cell.Said(Saying.of(code, ""));
  }

  public Table {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
    for (Row row : rows) {
      if (row.cells().size() != columns.size()) {
        throw new IllegalArgumentException(
            row.cells().size() + " cells in a row of a table with " + columns.size() + " columns");
      }
    }
  }
}
