package rundlauf.store;

import static org.assertj.core.api.Assertions.assertThat;
import static rundlauf.store.Invented.TRIAL;
import static rundlauf.store.Invented.reading;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import org.sqlite.SQLiteConfig.SynchronousMode;

/**
 * A process of its own that enters readings and prints the key of each, on one line in one write,
 * after it was acknowledged.
 */
final class Entering {
  private Entering() {}

  /** {@code FILE SYNCHRONOUS PREFIX COUNT}. */
  public static void main(String[] args) throws IOException {
    var database = new SqliteFile(args[0], SynchronousMode.valueOf(args[1]));
    try (var out = new FileOutputStream(FileDescriptor.out);
        Store store = Store.open(database, List.of(Store.MIGRATIONS), InstantSource.system())) {
      Invented.begin(store.benches());
      for (int i = 0; i < Integer.parseInt(args[3]); i++) {
        String key = args[2] + "-" + i;
        store.benches().append(TRIAL, reading(key, "45", Integer.toString(i)));
        out.write((key + "\n").getBytes(StandardCharsets.US_ASCII));
      }
    }
  }

  /** The command that starts it. */
  static List<String> command(String file, SynchronousMode synchronous, String prefix, int count) {
    return java(Entering.class, file, synchronous.name(), prefix, Integer.toString(count));
  }

  /** The command that starts a class of the tests as a process of its own. */
  static List<String> java(Class<?> started, String... args) {
    List<String> command = new ArrayList<>();
    command.add(System.getProperty("java.home") + "/bin/java");
    command.addAll(List.of("-Xmx256m", "-XX:TieredStopAtLevel=1"));
    command.addAll(List.of("-cp", System.getProperty("java.class.path"), started.getName()));
    command.addAll(List.of(args));
    return command;
  }

  /** Runs such a command to its end, which is a good one. */
  static void run(List<String> command, Path out, Path err)
      throws IOException, InterruptedException {
    Process process =
        new ProcessBuilder(command)
            .redirectOutput(out.toFile())
            .redirectError(err.toFile())
            .start();
    assertThat(process.waitFor()).as("%s", err).isZero();
  }
}
