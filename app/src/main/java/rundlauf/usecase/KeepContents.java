package rundlauf.usecase;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rundlauf.bench.Bench;
import rundlauf.bench.Entry;
import rundlauf.bench.Table;
import rundlauf.bench.Trial;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;

/**
 * Takes the files of a bench into the store: documents as they were typed, each row of a table as a
 * reading under its {@code id} (else by its position), what its trials name as recordings and
 * photos as attachments.
 */
public final class KeepContents {
  private static final List<String> OF_THE_ROW = List.of("id", "struck", "reason");

  private final BenchStore benches;
  private final AttachmentStore attachments;
  private final Documents documents;

  public KeepContents(BenchStore benches, AttachmentStore attachments, Documents documents) {
    this.benches = benches;
    this.attachments = attachments;
    this.documents = documents;
  }

  /**
   * Keeps a bench and all its trials.
   *
   * @return the name of the bench
   * @throws Refused when a file cannot be read, or a bench or trial of that name is kept otherwise
   */
  public String keep(BenchContents contents) {
    Bench bench = documents.bench(contents);
    benches.keepBench(bench.name(), text(contents, BenchContents.DOCUMENT));
    for (Trial trial : bench.trials()) {
      keep(contents, bench.name(), trial);
    }
    return bench.name();
  }

  private void keep(BenchContents contents, String bench, Trial trial) {
    String path = trial.file().substring(BenchContents.TRIALS.length());
    var name = new TrialName(bench, path);
    benches.keepTrial(name, documents.write(withoutReadings(trial.document())));
    trial.readings().ifPresent(table -> keep(name, table));
    String folder = trial.file().substring(0, trial.file().lastIndexOf('/') + 1);
    for (String file : named(trial.document())) {
      byte[] content =
          contents
              .find(folder + file)
              .orElseThrow(
                  () ->
                      Refused.at(
                          new Place(trial.file(), 0, 0, ""), "file-missing", Arg.typed(file)));
      attachments.attach(name, file, content);
    }
  }

  private void keep(TrialName trial, Table table) {
    for (int i = 0; i < table.rows().size(); i++) {
      Map<String, String> cells = cells(table, table.rows().get(i));
      String key = Optional.ofNullable(cells.get("id")).orElse("r" + (i + 1));
      List<TypedReading.Cell> typed = new ArrayList<>();
      cells.forEach(
          (column, text) -> {
            if (!OF_THE_ROW.contains(column)) {
              typed.add(new TypedReading.Cell(column, text));
            }
          });
      benches.append(trial, new TypedReading(key, typed));
      if ("yes".equals(cells.get("struck"))) {
        benches.strike(trial, key, Optional.ofNullable(cells.get("reason")).orElse("-"));
      }
    }
  }

  /** The cells of a row in which something stands, by their column. */
  private static Map<String, String> cells(Table table, Table.Row row) {
    Map<String, String> cells = new LinkedHashMap<>();
    for (int i = 0; i < table.columns().size(); i++) {
      String text = row.cells().get(i).text();
      if (!text.isEmpty()) {
        cells.put(table.columns().get(i).text(), text);
      }
    }
    return cells;
  }

  private static Entry.Fields withoutReadings(Entry.Fields document) {
    Map<String, Entry> fields = new LinkedHashMap<>(document.fields());
    fields.remove("readings");
    return new Entry.Fields(fields, document.keyPlaces(), document.place());
  }

  /** The files that a trial names beside its table. */
  private static List<String> named(Entry.Fields document) {
    List<String> files = new ArrayList<>();
    document.get("recording").ifPresent(entry -> add(entry, files));
    if (document.get("photos").orElse(null) instanceof Entry.Items photos) {
      photos.items().forEach(entry -> add(entry, files));
    }
    return files;
  }

  private static void add(Entry entry, List<String> files) {
    if (entry instanceof Entry.Scalar file) {
      files.add(file.text().strip());
    }
  }

  private static String text(BenchContents contents, String path) {
    return new String(contents.find(path).orElseThrow(), StandardCharsets.UTF_8);
  }
}
