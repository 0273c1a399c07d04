package rundlauf.usecase;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rundlauf.bench.Entry;
import rundlauf.bench.RowColumns;
import rundlauf.bench.Table;
import rundlauf.bench.Trial;

/**
 * A trial's file as the store takes it.
 *
 * @param document without its readings
 * @param rows its readings
 * @param table the file of its table, where that is one of its own
 * @param files recordings and photos, by their paths
 */
record ImportedTrial(
    TrialName name, String document, List<Row> rows, Optional<String> table, List<String> files) {
  /** Columns that the store keeps in its own way; when a reading was taken is kept as typed. */
  private static final List<String> KEPT_APART =
      List.of(RowColumns.ID, RowColumns.STRUCK, RowColumns.REASON);

  private static final String NO_REASON = "no reason given";

  /** A reading, and why it was struck out. */
  record Row(TypedReading reading, Optional<String> struck) {}

  static ImportedTrial of(String bench, Trial trial, Documents documents) {
    String path = trial.file().substring(BenchContents.TRIALS.length());
    String folder = trial.file().substring(0, trial.file().lastIndexOf('/') + 1);
    return new ImportedTrial(
        new TrialName(bench, path),
        documents.write(trial.document().without("readings")),
        trial.readings().map(ImportedTrial::rows).orElse(List.of()),
        trial.readings().map(t -> t.place().file()).filter(file -> !file.equals(trial.file())),
        named(trial.document()).stream().map(file -> folder + file).toList());
  }

  private static List<Row> rows(Table table) {
    List<Row> rows = new ArrayList<>();
    for (Table.Row row : table.rows()) {
      Map<String, String> cells = table.texts(row);
      String key = Optional.ofNullable(cells.get(RowColumns.ID)).orElse("r" + (rows.size() + 1));
      List<TypedReading.Cell> typed = new ArrayList<>();
      cells.forEach(
          (column, text) -> {
            if (!KEPT_APART.contains(column)) {
              typed.add(new TypedReading.Cell(column, text));
            }
          });
      Optional<String> struck =
          "yes".equals(cells.get(RowColumns.STRUCK))
              ? Optional.of(cells.getOrDefault(RowColumns.REASON, NO_REASON))
              : Optional.empty();
      struck.ifPresent(why -> CellText.require(RowColumns.REASON, why));
      rows.add(new Row(CellText.checked(new TypedReading(key, typed)), struck));
    }
    return rows;
  }

  /** The files that a trial names beside its table. */
  private static List<String> named(Entry.Fields document) {
    List<String> files = new ArrayList<>();
    document.get("recording").ifPresent(entry -> add(entry, files));
    document
        .get("photos")
        .ifPresent(
            photos -> {
              if (photos instanceof Entry.Items items) {
                items.items().forEach(entry -> add(entry, files));
              } else {
                add(photos, files);
              }
            });
    return files;
  }

  private static void add(Entry entry, List<String> files) {
    if (entry instanceof Entry.Scalar file && !file.text().isBlank()) {
      files.add(file.text().strip());
    }
  }
}
