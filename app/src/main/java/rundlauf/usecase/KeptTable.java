package rundlauf.usecase;

import java.util.ArrayList;
import java.util.List;
import rundlauf.bench.Entry;
import rundlauf.bench.RowColumns;

/**
 * The readings of a trial as one table: {@code id}, what was typed in the order in which its
 * columns first came, and, where a reading was struck out, {@code struck} and {@code reason}.
 *
 * @param rows each with as many cells as there are columns
 */
record KeptTable(List<String> columns, List<List<String>> rows) {
  static KeptTable of(List<Kept.Reading> readings) {
    List<String> typed =
        readings.stream()
            .flatMap(r -> r.typed().cells().stream())
            .map(TypedReading.Cell::column)
            .distinct()
            .toList();
    boolean struck = readings.stream().anyMatch(r -> r.struck().isPresent());
    List<String> columns = new ArrayList<>(List.of(RowColumns.ID));
    columns.addAll(typed);
    if (struck) {
      columns.addAll(List.of(RowColumns.STRUCK, RowColumns.REASON));
    }
    return new KeptTable(columns, readings.stream().map(r -> row(r, typed, struck)).toList());
  }

  private static List<String> row(Kept.Reading reading, List<String> typed, boolean struck) {
    List<String> row = new ArrayList<>(List.of(reading.typed().key()));
    typed.forEach(column -> row.add(text(reading.typed(), column)));
    if (struck) {
      row.add(reading.struck().isPresent() ? "yes" : "no");
      row.add(reading.struck().map(Kept.Strike::reason).orElse(""));
    }
    return row;
  }

  private static String text(TypedReading reading, String column) {
    return reading.cells().stream()
        .filter(cell -> cell.column().equals(column))
        .map(TypedReading.Cell::text)
        .findFirst()
        .orElse("");
  }

  String write(Documents documents) {
    return documents.writeTable(columns, rows);
  }

  /** The line by which a trial's document names its table. */
  static Entry.Fields readingsField(String file) {
    return Entry.Fields.none().with("readings", Entry.Scalar.of(file));
  }
}
