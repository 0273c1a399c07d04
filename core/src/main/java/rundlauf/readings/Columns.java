package rundlauf.readings;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rundlauf.bench.Entry;
import rundlauf.bench.Nearest;
import rundlauf.bench.RowColumns;
import rundlauf.bench.Section;
import rundlauf.bench.Table;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.QuantityText;
import rundlauf.quantity.Refused;
import rundlauf.quantity.Unit;

/** The columns of a table by their names, each with its unit; and its rows that are not struck. */
final class Columns {
  /** Where a column stands and what its numbers are in. */
  private record Found(int index, Unit unit, Entry.Scalar header) {}

  private final Table table;
  private final Map<String, Found> found = new LinkedHashMap<>();

  private Columns(Table table) {
    this.table = table;
  }

  /** The table's columns, all of which must be accepted ones, none twice. */
  static Columns of(Table table, List<Column> own) {
    List<Column> accepted = new ArrayList<>(own);
    RowColumns.ALL.forEach(name -> accepted.add(Column.bare(name)));
    Columns columns = new Columns(table);
    for (int i = 0; i < table.columns().size(); i++) {
      columns.add(i, table.columns().get(i), accepted);
    }
    return columns;
  }

  private void add(int index, Entry.Scalar header, List<Column> accepted) {
    String typed = header.text().strip();
    Column column =
        accepted.stream()
            .filter(c -> typed.equals(c.name()) || typed.startsWith(c.name() + "_"))
            .findFirst()
            .orElseThrow(() -> unknown(header, typed, accepted));
    Found one = new Found(index, unit(column, typed, header), header);
    if (found.put(column.name(), one) != null) {
      throw Refused.at(header.place(), "column-twice", Arg.of(column.name()));
    }
  }

  private static Refused unknown(Entry.Scalar header, String typed, List<Column> accepted) {
    List<String> shown = accepted.stream().map(Column::shown).toList();
    return Refused.at(
        header.place(), "column-unknown", Arg.typed(typed), Arg.list(Nearest.first(typed, shown)));
  }

  private static Unit unit(Column column, String typed, Entry.Scalar header) {
    if (typed.equals(column.name())) {
      if (column.bare()) {
        return Unit.ONE;
      }
      throw Refused.at(header.place(), "column-without-unit", Arg.typed(typed), names(column));
    }
    String symbol = typed.substring(column.name().length() + 1);
    if (column.dial() && symbol.equals(Column.DIVISIONS)) {
      return Unit.ONE;
    }
    return Unit.ofSymbol(symbol)
        .filter(column.units()::contains)
        .orElseThrow(
            () ->
                Refused.at(
                    header.place(),
                    "column-unit-unknown",
                    Arg.typed(symbol),
                    Arg.of(column.name()),
                    names(column)));
  }

  private static Arg names(Column column) {
    List<String> names = new ArrayList<>();
    if (column.bare()) {
      names.add(column.name());
    }
    column.units().forEach(u -> names.add(column.name() + "_" + u.symbol()));
    if (column.dial()) {
      names.add(column.name() + "_" + Column.DIVISIONS);
    }
    return Arg.list(names);
  }

  boolean has(String name) {
    return found.containsKey(name);
  }

  /** The unit in a column's name; {@link Unit#ONE} when it carries none. */
  Unit unit(String name) {
    return get(name).unit();
  }

  /** Refuses a table without this column. */
  void require(Column column) {
    if (!has(column.name())) {
      List<String> there = table.columns().stream().map(Entry.Scalar::text).toList();
      throw Refused.at(
          table.place(), "column-missing", Arg.of(column.shown()), Arg.typed(list(there)));
    }
  }

  /** The refusal of a table that lacks one of several columns. */
  Refused missing(String code) {
    return Refused.at(table.place(), code);
  }

  private static String list(List<String> names) {
    return String.join(", ", names);
  }

  private Found get(String name) {
    Found one = found.get(name);
    if (one == null) {
      throw new IllegalArgumentException("no column " + name);
    }
    return one;
  }

  /** Where a column's name stands. */
  Place place(String name) {
    return get(name).header().place();
  }

  /** The rows that were not struck, in their order. */
  List<Table.Row> used() {
    return table.rows().stream().filter(row -> !isStruck(row)).toList();
  }

  /** The refusal of a table with no row to use. */
  Refused none() {
    return table.rows().isEmpty()
        ? Refused.at(table.place(), "no-rows")
        : Refused.at(table.place(), "all-rows-struck", Arg.of(table.rows().size()));
  }

  private boolean isStruck(Table.Row row) {
    Optional<Entry.Scalar> cell = cell(row, RowColumns.STRUCK);
    if (cell.isEmpty()) {
      return false;
    }
    return switch (cell.get().text().strip()) {
      case "yes" -> true;
      case "no" -> false;
      default ->
          throw Refused.at(cell.get().place(), "struck-unknown", Arg.typed(cell.get().text()));
    };
  }

  /** What was typed; empty for a blank cell or a column that is not there. */
  Optional<Entry.Scalar> cell(Table.Row row, String name) {
    return has(name)
        ? Optional.of(typed(row, name)).filter(c -> !c.text().isBlank())
        : Optional.empty();
  }

  /** The cell of a column that is there. */
  Entry.Scalar typed(Table.Row row, String name) {
    return row.cells().get(get(name).index());
  }

  /** A number in SI; a blank cell is refused. */
  double si(Table.Row row, String name) {
    Entry.Scalar cell = typed(row, name);
    return QuantityText.bare(cell.text(), unit(name), cell.flow(), cell.place());
  }

  /** A number in SI; empty for a blank cell or a column that is not there. */
  Optional<Double> siIfGiven(Table.Row row, String name) {
    return cell(row, name).map(c -> si(row, name));
  }

  /** A number in SI, 0 or more; a blank cell is refused. */
  double notNegative(Table.Row row, String name) {
    double si = si(row, name);
    if (si < 0) {
      Entry.Scalar cell = typed(row, name);
      throw Refused.at(cell.place(), "value-negative", Arg.typed(cell.text()));
    }
    return si;
  }

  /** A whole number from {@code least} up. */
  int count(Table.Row row, String name, int least) {
    return Section.count(typed(row, name), least);
  }

  /** One of the accepted words; empty for a blank cell or a column that is not there. */
  Optional<String> word(Table.Row row, String name, List<String> accepted) {
    Optional<Entry.Scalar> cell = cell(row, name);
    Optional<String> word = cell.map(c -> c.text().strip());
    if (word.isPresent() && !accepted.contains(word.get())) {
      Arg nearest = Arg.list(Nearest.first(word.get(), accepted));
      throw Refused.at(cell.orElseThrow().place(), "word-unknown", Arg.typed(word.get()), nearest);
    }
    return word;
  }
}
