package rundlauf.demo;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import rundlauf.files.DiskTrials;
import rundlauf.maths.Draws;
import rundlauf.maths.Work;
import rundlauf.reduce.Reduced;
import rundlauf.usecase.ReduceTrial;

/** Every trial of the demo bench reduced as a user would, once for all tests. */
final class DemoResults {
  private static final Map<String, Reduced> BY_FILE = reduced();

  private DemoResults() {}

  static Reduced of(String file) {
    Reduced result = BY_FILE.get(file);
    if (result == null) {
      throw new IllegalArgumentException("no demo trial " + file);
    }
    return result;
  }

  static List<String> files() {
    return List.copyOf(BY_FILE.keySet());
  }

  private static Map<String, Reduced> reduced() {
    ReduceTrial reduce = new ReduceTrial(new DiskTrials(), Work.sequential());
    Map<String, Reduced> all = new LinkedHashMap<>();
    try (Stream<Path> files = Files.list(DemoTruth.DEMO.resolve("bench").resolve("trials"))) {
      files
          .filter(file -> file.toString().endsWith(".yaml"))
          .sorted()
          .forEach(
              file ->
                  all.put(
                      String.valueOf(file.getFileName()),
                      reduce.reduce(file.toString(), Draws.DEFAULT)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return all;
  }
}
