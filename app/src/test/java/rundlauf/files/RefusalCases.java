package rundlauf.files;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The cases of {@code refusals.txt}. */
final class RefusalCases {
  private RefusalCases() {}

  /** Files that are refused, and the whole line that says so. */
  record Case(String code, Map<String, String> files, String line) {
    void writeTo(Path folder) throws IOException {
      for (Map.Entry<String, String> file : files.entrySet()) {
        Path path = folder.resolve(file.getKey());
        Files.createDirectories(path.getParent());
        Files.writeString(path, file.getValue());
      }
    }

    @Override
    public String toString() {
      return line;
    }
  }

  static List<Case> all() {
    List<Case> cases = new ArrayList<>();
    String code = "";
    String path = "";
    Map<String, String> files = new LinkedHashMap<>();
    for (String line : text().lines().toList()) {
      if (line.startsWith("=== ")) {
        code = line.substring(4);
      } else if (line.startsWith("--- ")) {
        path = line.substring(4);
        files.put(path, "");
      } else if (line.startsWith(">>> ")) {
        cases.add(new Case(code, files, line.substring(4)));
        files = new LinkedHashMap<>();
      } else if (!files.isEmpty()) {
        files.merge(path, line + "\n", String::concat);
      }
    }
    return cases;
  }

  private static String text() {
    try (InputStream in = RefusalCases.class.getResourceAsStream("refusals.txt")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
