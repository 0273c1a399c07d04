package rundlauf.usecase;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import rundlauf.bench.RowColumns;
import rundlauf.bench.Table;

/** What the columns of a table hold, as far as its cells show it. */
final class TableColumns {
  private static final Pattern WHOLE = Pattern.compile("[+-]?\\d+");
  private static final Pattern POINT = Pattern.compile("[+-]?\\d+(\\.\\d+)?([eE][+-]?\\d+)?");
  private static final Pattern COMMA = Pattern.compile("[+-]?\\d+(,\\d+)?");

  private TableColumns() {}

  static PackageFile.Columns of(Table table) {
    List<PackageFile.Column> columns = new ArrayList<>();
    for (int i = 0; i < table.columns().size(); i++) {
      columns.add(column(table, i));
    }
    return new PackageFile.Columns(table.commaParts() ? "," : ";", columns);
  }

  private static PackageFile.Column column(Table table, int index) {
    String name = table.columns().get(index).text();
    int mark = name.indexOf('_');
    String unit = mark < 0 ? "" : name.substring(mark + 1);
    List<String> cells =
        table.rows().stream()
            .map(row -> row.cells().get(index).text())
            .filter(text -> !text.isEmpty())
            .toList();
    if (cells.isEmpty() || name.equals(RowColumns.ID)) {
      return new PackageFile.Column(name, "string", unit, false);
    }
    if (all(cells, WHOLE)) {
      return new PackageFile.Column(name, unit.isEmpty() ? "integer" : "number", unit, false);
    }
    boolean point = all(cells, POINT);
    boolean comma = !point && all(cells, COMMA);
    return new PackageFile.Column(name, point || comma ? "number" : "string", unit, comma);
  }

  private static boolean all(List<String> cells, Pattern pattern) {
    return cells.stream().allMatch(cell -> pattern.matcher(cell).matches());
  }
}
