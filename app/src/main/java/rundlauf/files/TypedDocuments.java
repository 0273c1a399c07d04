package rundlauf.files;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import rundlauf.bench.Bench;
import rundlauf.bench.Entry;
import rundlauf.bench.Table;
import rundlauf.bench.Trial;
import rundlauf.quantity.Place;
import rundlauf.usecase.BenchContents;
import rundlauf.usecase.Documents;

/** Documents in YAML, tables in CSV. */
public final class TypedDocuments implements Documents {
  @Override
  public Entry.Fields read(String text, String name) {
    return YamlDocument.read(text, name).fields();
  }

  @Override
  public String write(Entry.Fields document) {
    return YamlText.of(document);
  }

  @Override
  public Table table(String text, String name) {
    try (InputStream bytes = new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8))) {
      return CsvTable.read(new ByteLines(bytes, name), name, new Place(name, 0, 0, "readings"));
    } catch (IOException broken) {
      throw new UncheckedIOException(broken); // memory does not break
    }
  }

  @Override
  public String writeTable(List<String> columns, List<List<String>> rows) {
    return CsvText.of(columns, rows);
  }

  @Override
  public Trial trial(BenchContents contents, String path) {
    return TrialFiles.read(new ContentsFolder(contents), path);
  }

  @Override
  public Bench bench(BenchContents contents) {
    return BenchFiles.read(new ContentsFolder(contents));
  }
}
