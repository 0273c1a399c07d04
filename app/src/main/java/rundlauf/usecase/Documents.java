package rundlauf.usecase;

import java.util.List;
import rundlauf.bench.Bench;
import rundlauf.bench.Entry;
import rundlauf.bench.Table;
import rundlauf.bench.Trial;

/**
 * Texts of documents and tables, read and written. Whatever cannot be read one way only is refused
 * with {@link rundlauf.quantity.Refused}, which names the file as it was named here.
 */
public interface Documents {
  /** A document as it was typed. */
  Entry.Fields read(String text, String name);

  /** A document in text that reads back the same; one document always gives the same text. */
  String write(Entry.Fields document);

  /** A table as it was typed. */
  Table table(String text, String name);

  /**
   * A table in text that reads back the same.
   *
   * @param columns their names
   * @param rows each with as many cells as there are columns; no line break within one
   */
  String writeTable(List<String> columns, List<List<String>> rows);

  /**
   * One trial of a bench, with its table.
   *
   * @param path of its file among the contents
   */
  Trial trial(BenchContents contents, String path);

  /** A bench with all its trials; they are named by their paths. */
  Bench bench(BenchContents contents);
}
