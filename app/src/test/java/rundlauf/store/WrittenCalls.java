package rundlauf.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.sqlite.SQLiteConfig.SynchronousMode;

/** What {@link Entering} had the system do to a store's files, with every byte, in order. */
final class WrittenCalls {
  /** One call. */
  sealed interface Call {}

  /** Bytes put at a place of a file. */
  record Write(String file, int offset, byte[] bytes) implements Call {}

  /** A file cut to a length, or made longer. */
  record Cut(String file, int length) implements Call {}

  /** All that was put into a file is on the disk. */
  record Flush(String file) implements Call {}

  /** A reading acknowledged. */
  record Said(String key) implements Call {}

  private static final Pattern CALL =
      Pattern.compile(
          "\\d+ +(\\w+)\\(\\d+<([^>]*)>(?:, \"([^\"]*)\")?(?:, (\\d+))?(?:, (\\d+))?\\) += (\\d+)");

  private WrittenCalls() {}

  /**
   * Lets readings be entered into {@code bench.db} of a folder, which is also written back from its
   * log now and then.
   *
   * @param count of readings, {@code k-0} and so on
   */
  static List<Call> of(SynchronousMode synchronous, int count, Path folder)
      throws IOException, InterruptedException {
    Path trace = folder.resolve("calls.txt");
    Path file = folder.resolve("bench.db");
    Path out = folder.resolve("out.txt");
    List<String> command = new ArrayList<>(List.of("strace", "-f", "-qq", "-y", "-xx"));
    command.addAll(List.of("-s", "100000", "-o", trace.toString()));
    command.addAll(List.of("-e", "trace=write,pwrite64,fsync,fdatasync,ftruncate"));
    for (Object ours : List.of(file, file + "-wal", out)) {
      command.addAll(List.of("-P", ours.toString()));
    }
    command.addAll(Entering.command(file + "?wal_autocheckpoint=12", synchronous, "k", count));
    Path err = folder.resolve("err.txt");
    Entering.run(command, out, err);
    List<Call> calls = new ArrayList<>();
    for (String line : Files.readAllLines(trace)) {
      if (!line.contains(" --- ") && !line.contains(" +++ ")) {
        calls.add(call(line));
      }
    }
    return calls;
  }

  private static Call call(String line) {
    Matcher found = CALL.matcher(line);
    if (!found.lookingAt()) {
      throw new IllegalStateException(line.substring(0, Math.min(line.length(), 200)));
    }
    String file = Path.of(text(found.group(2))).getFileName().toString();
    return switch (found.group(1)) {
      case "pwrite64" -> {
        byte[] bytes = bytes(found.group(3));
        assertThat(found.group(6)).isEqualTo(Integer.toString(bytes.length));
        yield new Write(file, Integer.parseInt(found.group(5)), bytes);
      }
      case "ftruncate" -> new Cut(file, Integer.parseInt(found.group(4)));
      case "fsync", "fdatasync" -> new Flush(file);
      default -> new Said(text(found.group(3)).strip());
    };
  }

  private static byte[] bytes(String written) {
    return HexFormat.of().parseHex(written.replace("\\x", ""));
  }

  private static String text(String written) {
    return new String(bytes(written), StandardCharsets.UTF_8);
  }
}
