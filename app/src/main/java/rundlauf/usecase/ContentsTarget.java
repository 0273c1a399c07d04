package rundlauf.usecase;

/** Where packages and pages are written to. */
public interface ContentsTarget {
  /**
   * Refuses a folder in which something lies already: nothing of a user's is ever overwritten.
   *
   * @param folder as the user named it
   */
  void requireFresh(String folder);

  /** Writes the files of a package into a folder. */
  void write(String folder, BenchContents contents);

  /** Writes one file into a folder. */
  void write(String folder, String name, byte[] content);

  /** The files packed, always the same bytes for the same files. */
  byte[] zip(BenchContents contents);
}
