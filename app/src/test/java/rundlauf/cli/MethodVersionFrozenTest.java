package rundlauf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rundlauf.readings.TrialKind;
import rundlauf.reduce.Method;
import rundlauf.usecase.Sha256;

/**
 * The version of a method rises whenever its frozen output moves: packages that were published with
 * an older one then say so. Whoever refreezes an output raises the version, and writes both here.
 */
class MethodVersionFrozenTest {
  private static final Path FROZEN = Path.of("src/test/resources/rundlauf/cli/frozen");

  @ParameterizedTest
  @EnumSource(TrialKind.class)
  void risesWithItsFrozenOutput(TrialKind kind) throws IOException {
    List<String> kept = Files.readAllLines(FROZEN.resolve("method-versions.txt"));
    String now = kind.word() + " " + Method.of(kind).version() + " " + digest(kind);
    assertThat(kept)
        .as("the output of %s moved: raise its version in Method, and write: %s", kind, now)
        .contains(now);
  }

  private static String digest(TrialKind kind) throws IOException {
    byte[] frozen = Files.readAllBytes(FROZEN.resolve(kind.word() + ".yaml.json"));
    return Sha256.hex(frozen).substring(0, 16);
  }
}
