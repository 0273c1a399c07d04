package rundlauf.guide;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rundlauf.bench.Entry;
import rundlauf.bench.EntryTexts;
import rundlauf.bench.RowColumns;
import rundlauf.bench.Table;
import rundlauf.bench.Trial;
import rundlauf.quantity.Format;
import rundlauf.quantity.Unit;

/**
 * The rows of a trial that are not struck out, as they were typed; an inspection may have them as
 * items of its document.
 *
 * @param columns of the table
 * @param rows by column; empty cells are left out
 */
record TypedRows(List<String> columns, List<Map<String, String>> rows) {
  static TypedRows of(Trial trial) {
    return trial.readings().map(TypedRows::of).orElseGet(() -> ofItems(trial.document()));
  }

  private static TypedRows ofItems(Entry.Fields document) {
    List<Map<String, String>> rows = new ArrayList<>();
    if (document.get("items").orElse(null) instanceof Entry.Items items) {
      for (Entry item : items.items()) {
        if (item instanceof Entry.Fields fields) {
          rows.add(EntryTexts.all(fields));
        }
      }
    }
    return new TypedRows(List.of(), rows);
  }

  private static TypedRows of(Table table) {
    List<String> columns = table.columns().stream().map(c -> c.text().strip()).toList();
    List<Map<String, String>> rows = new ArrayList<>();
    for (Table.Row row : table.rows()) {
      Map<String, String> cells = table.texts(row);
      if (!"yes".equals(cells.get(RowColumns.STRUCK))) {
        rows.add(cells);
      }
    }
    return new TypedRows(columns, rows);
  }

  Optional<Map<String, String>> last() {
    return rows.isEmpty() ? Optional.empty() : Optional.of(rows.get(rows.size() - 1));
  }

  /** The column of this table whose name begins so, such as {@code reading_um}. */
  Optional<String> column(String name) {
    return columns.stream().filter(c -> c.equals(name) || c.startsWith(name + "_")).findFirst();
  }

  /**
   * A length in the unit of its column in this table; in millimetres where it has none.
   *
   * @param name of the column without its unit
   */
  Given length(String name, double metres) {
    String column = column(name).orElse(name + "_mm");
    String symbol = column.substring(column.indexOf('_') + 1);
    Unit unit = Unit.ofSymbol(symbol).orElse(Unit.MILLIMETRE);
    return new Given(column, Format.number(unit.fromSi(metres)));
  }

  /** Whether two cells say the same: as numbers where both are, else word for word. */
  static boolean same(String one, String other) {
    Optional<BigDecimal> a = number(one);
    Optional<BigDecimal> b = number(other);
    return a.isPresent() && b.isPresent()
        ? a.get().compareTo(b.get()) == 0
        : one.strip().equals(other.strip());
  }

  static Optional<BigDecimal> number(String text) {
    String plain = text.strip().replace(',', '.').replace('−', '-');
    return plain.matches("[+-]?\\d{1,12}(\\.\\d{1,12})?")
        ? Optional.of(new BigDecimal(plain))
        : Optional.empty();
  }
}
