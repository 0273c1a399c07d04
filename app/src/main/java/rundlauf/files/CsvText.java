package rundlauf.files;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;

/** Writes a table so that {@link CsvTable} reads every cell back as it is. */
final class CsvText {
  private CsvText() {}

  /**
   * The table in CSV. Where a cell has a comma, semicolons part the cells: a decimal comma is read
   * only where commas do not part.
   *
   * @param rows each with as many cells as there are columns; no line break within one
   */
  static String of(List<String> columns, List<List<String>> rows) {
    boolean comma =
        columns.stream().anyMatch(CsvText::hasComma)
            || rows.stream().flatMap(List::stream).anyMatch(CsvText::hasComma);
    StringWriter out = new StringWriter();
    try (CsvWriter writer =
        CsvWriter.builder()
            .fieldSeparator(comma ? ';' : ',')
            .lineDelimiter(LineDelimiter.LF)
            .build(out)) {
      writer.writeRecord(columns);
      rows.forEach(writer::writeRecord);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken); // memory does not break
    }
    return out.toString();
  }

  private static boolean hasComma(String cell) {
    return cell.indexOf(',') >= 0;
  }
}
