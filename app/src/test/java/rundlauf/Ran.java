package rundlauf;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * One run of the command line within the test.
 *
 * @param status how it ended
 * @param out what it gave
 * @param err what it remarked
 */
public record Ran(int status, String out, String err) {
  public static Ran of(String... args) {
    var out = new ByteArrayOutputStream();
    var err = new ByteArrayOutputStream();
    int status = Main.run(out, err, false, args);
    return new Ran(
        status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }

  public List<String> lines() {
    return out.lines().toList();
  }
}
