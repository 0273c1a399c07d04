package rundlauf.simulated;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The demo bench in the tree is the one its generator makes. To make it anew: {@code mvn -q -pl
 * core test -Dtest=DemoBenchTest -Drundlauf.demo=write}.
 */
class DemoBenchTest {
  private static final Path DEMO = Path.of("..", "demo");

  @BeforeAll
  static void writeWhenAsked() throws IOException {
    if ("write".equals(System.getProperty("rundlauf.demo"))) {
      for (Map.Entry<String, String> file : DemoBench.files().entrySet()) {
        Path path = DEMO.resolve(file.getKey());
        Files.createDirectories(path.getParent());
        Files.writeString(path, file.getValue());
      }
      Files.writeString(DEMO.resolve("index.txt"), index());
    }
  }

  static Stream<Map.Entry<String, String>> files() {
    return DemoBench.files().entrySet().stream();
  }

  @ParameterizedTest
  @MethodSource("files")
  void madeAnewItIsTheSameToTheByte(Map.Entry<String, String> file) throws IOException {
    assertThat(Files.readString(DEMO.resolve(file.getKey()))).isEqualTo(file.getValue());
  }

  @Test
  void theIndexListsEveryFileOfTheBench() throws IOException {
    assertThat(Files.readString(DEMO.resolve("index.txt"))).isEqualTo(index());
  }

  @Test
  void nothingInTheBenchFailsToSayThatItIsInvented() throws IOException {
    for (String file : index().lines().filter(f -> f.endsWith(".yaml")).toList()) {
      List<String> lines = Files.readAllLines(DEMO.resolve("bench").resolve(file));
      assertThat(lines)
          .as(file)
          .anyMatch(l -> l.matches("(title|bench): .*\\(invented\\)\"?"))
          .anyMatch(l -> l.matches("  Invented: no such .*"));
    }
  }

  /** Every file of the bench, a line each, in order of name. */
  private static String index() throws IOException {
    Path bench = DEMO.resolve("bench");
    try (Stream<Path> walk = Files.walk(bench)) {
      return walk.filter(Files::isRegularFile)
          .map(p -> bench.relativize(p).toString().replace('\\', '/'))
          .sorted()
          .collect(Collectors.joining("\n", "", "\n"));
    }
  }
}
