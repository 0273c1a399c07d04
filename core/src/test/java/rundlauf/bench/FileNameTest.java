package rundlauf.bench;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FileNameTest {
  @ParameterizedTest
  @CsvSource({
    "a.yaml, a.yaml",
    "trials/a.yaml, a.yaml",
    "/somewhere/bench/trials/a.yaml, a.yaml",
    "bench/trials/monday/a.yaml, monday/a.yaml",
    "C:\\bench\\trials\\a.yaml, a.yaml",
    "/old/trials/bench/trials/a.yaml, a.yaml",
    "elsewhere/a.yaml, a.yaml"
  })
  void isThePathWithinTheTrialsElseTheLastPart(String path, String name) {
    assertThat(FileName.of(path)).isEqualTo(name);
  }
}
