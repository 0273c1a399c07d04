package rundlauf.bench;

/** The last part of a path, whatever parts it. */
public final class FileName {
  private FileName() {}

  /** What stands behind the last {@code /} or {@code \\}; the whole text when there is none. */
  public static String of(String path) {
    int last = Math.max(path.lastIndexOf('/'), path.lastIndexOf('\\'));
    return path.substring(last + 1);
  }
}
