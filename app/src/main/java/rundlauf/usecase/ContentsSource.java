package rundlauf.usecase;

/** Where the files of benches and packages are read from. */
public interface ContentsSource {
  /**
   * The files of a bench: its document, its trials, and the two documents of a package where it has
   * them; what else lies there is left.
   *
   * @param place a folder, or a ZIP of it, as the user named it
   * @throws rundlauf.quantity.Refused when it cannot be read, or is too large
   */
  BenchContents contents(String place);

  /** The same of a ZIP that was sent. */
  BenchContents contents(byte[] zip, String name);
}
