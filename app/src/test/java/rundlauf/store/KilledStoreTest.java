package rundlauf.store;

import static org.assertj.core.api.Assertions.assertThat;
import static rundlauf.store.Invented.TRIAL;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.sqlite.SQLiteConfig.SynchronousMode;
import rundlauf.usecase.Kept.Reading;

/** A process that is killed hard while readings are entered: every acknowledged one is there. */
class KilledStoreTest {
  /** More than are entered before the kill. */
  private static final int NEVER_REACHED = 1_000_000;

  @TempDir private Path folder;

  @Test
  void killedTenTimes() throws Exception {
    kill(10);
  }

  @Test
  @Tag("long")
  void killedTwoHundredTimes() throws Exception {
    kill(200);
  }

  /** Kills again and again, on one file, after 1 to 40 acknowledgements. */
  private void kill(int times) throws Exception {
    String file = folder.resolve("bench.db").toString();
    var draws = new SplittableRandom(20261125);
    List<String> acknowledged = new ArrayList<>();
    for (int run = 0; run < times; run++) {
      acknowledged.addAll(killedAfter(file, "run" + run, draws.nextInt(1, 41)));
      List<Reading> kept = kept(file);
      assertThat(kept).extracting(r -> r.typed().key()).containsAll(acknowledged);
      assertThat(kept)
          .extracting(Reading::position)
          .containsExactlyElementsOf(IntStream.rangeClosed(1, kept.size()).boxed().toList());
      // besides what was acknowledged, at most the one under way in each run
      assertThat(kept.size()).isBetween(acknowledged.size(), acknowledged.size() + run + 1);
    }
    assertThat(acknowledged.size()).isGreaterThan(times * 5);
  }

  private static List<Reading> kept(String file) {
    try (Store store = Store.open(file, new Ticking())) {
      return store.benches().readings(TRIAL);
    }
  }

  private static List<String> killedAfter(String file, String prefix, int acknowledgements)
      throws IOException, InterruptedException {
    Process process =
        new ProcessBuilder(Entering.command(file, SynchronousMode.FULL, prefix, NEVER_REACHED))
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    List<String> keys = new ArrayList<>();
    try (BufferedReader lines = process.inputReader()) {
      while (keys.size() < acknowledgements) {
        keys.add(whole(lines.readLine()));
      }
      process.toHandle().destroyForcibly(); // unlike the process, leaves its output readable
      // what it had printed before it died counts too
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        keys.add(line);
      }
    } finally {
      process.destroyForcibly().waitFor();
    }
    assertThat(process.exitValue()).isEqualTo(128 + 9);
    return keys;
  }

  private static String whole(String line) {
    assertThat(line).as("the process ended by itself").isNotNull();
    return line;
  }
}
