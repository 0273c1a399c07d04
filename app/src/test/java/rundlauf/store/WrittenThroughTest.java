package rundlauf.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.sqlite.SQLiteConfig.SynchronousMode;

/**
 * What a killed process cannot show, for the system keeps what it wrote: that each reading was on
 * the disk when it was acknowledged. The system's own calls tell.
 */
class WrittenThroughTest {
  private static final int READINGS = 12;

  /** A successful wait for the disk, of the file that holds what is not yet in the store's. */
  private static final Pattern FLUSHED =
      Pattern.compile("f(?:data)?sync\\(\\d+<[^>]*bench\\.db-wal>");

  private static final Pattern WRITTEN = Pattern.compile("pwrite64\\(\\d+<[^>]*bench\\.db-wal>");

  private static final Pattern ACKNOWLEDGED =
      Pattern.compile("write\\(1<[^>]*>, \"(r-\\d+)\\\\n\"");

  @TempDir private Path folder;

  @Test
  void everyReadingIsOnTheDiskBeforeItIsAcknowledged() throws Exception {
    assertThat(acknowledgedTooEarly(SynchronousMode.FULL)).isEmpty();
  }

  @Test
  void withoutWaitingForTheDiskThisTestWouldFail() throws Exception {
    assertThat(acknowledgedTooEarly(SynchronousMode.OFF)).hasSize(READINGS);
  }

  /** The keys of readings that were acknowledged while something written was not flushed. */
  private List<String> acknowledgedTooEarly(SynchronousMode synchronous) throws Exception {
    List<String> early = new ArrayList<>();
    int acknowledged = 0;
    boolean waiting = true; // for a first write and its flush
    for (String call : calls(synchronous)) {
      Matcher key = ACKNOWLEDGED.matcher(call);
      if (WRITTEN.matcher(call).find()) {
        waiting = true;
      } else if (FLUSHED.matcher(call).find()) {
        waiting = false;
      } else if (key.find()) {
        acknowledged++;
        if (waiting) {
          early.add(key.group(1));
        }
        waiting = true; // each needs a flush of its own
      }
    }
    assertThat(acknowledged).isEqualTo(READINGS);
    return early;
  }

  private List<String> calls(SynchronousMode synchronous) throws IOException, InterruptedException {
    Path trace = folder.resolve("calls.txt");
    Path file = folder.resolve("bench.db");
    List<String> command = new ArrayList<>(List.of("strace", "-f", "-y", "-s", "64"));
    command.addAll(List.of("-e", "trace=write,pwrite64,fsync,fdatasync", "-o", trace.toString()));
    command.addAll(Entering.command(file.toString(), synchronous, "r", READINGS));
    Process process =
        new ProcessBuilder(command)
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("out.txt").toFile())
            .start();
    assertThat(process.waitFor()).as("%s", folder.resolve("out.txt")).isZero();
    return Files.readAllLines(trace);
  }
}
