package rundlauf.bench;

/**
 * A trial's name: its path within the bench's {@code trials} folder, else the last part of its
 * path.
 */
public final class FileName {
  private static final String TRIALS = "/trials/";

  private FileName() {}

  /** What stands behind the last {@code /trials/}, else behind the last {@code /} or {@code \}. */
  public static String of(String path) {
    String plain = path.replace('\\', '/');
    int within = ("/" + plain).lastIndexOf(TRIALS);
    return within >= 0
        ? plain.substring(within + TRIALS.length() - 1)
        : plain.substring(plain.lastIndexOf('/') + 1);
  }
}
