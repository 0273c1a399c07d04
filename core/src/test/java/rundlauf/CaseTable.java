package rundlauf;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import rundlauf.maths.Samples;

/** A table of published figures under {@code cases/}: a source line, a header, comma, point. */
public record CaseTable(List<String> columns, List<List<String>> rows) {
  /** Reads {@code cases/NAME.csv} of the repository. */
  public static CaseTable read(String name) {
    try {
      List<List<String>> lines =
          Files.readAllLines(Path.of("..", "cases", name + ".csv")).stream()
              .filter(line -> !line.startsWith("#") && !line.isBlank())
              .map(line -> Arrays.asList(line.split(",", -1)))
              .toList();
      return new CaseTable(lines.get(0), lines.subList(1, lines.size()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A column of numbers. */
  public Samples column(String name) {
    return Samples.generate(rows.size(), i -> number(i, name));
  }

  public double number(int row, String name) {
    return Double.parseDouble(rows.get(row).get(columns.indexOf(name)));
  }
}
