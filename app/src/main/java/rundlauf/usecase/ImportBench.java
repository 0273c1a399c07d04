package rundlauf.usecase;

/** Takes a package that was sent into the store. */
public final class ImportBench {
  private final ContentsSource source;
  private final KeepContents keepContents;

  public ImportBench(ContentsSource source, KeepContents keepContents) {
    this.source = source;
    this.keepContents = keepContents;
  }

  /**
   * Keeps the bench of a package.
   *
   * @param zip the package, or a bench without its two documents
   * @param name the file's name, for sentences
   * @return the name of the bench
   * @throws rundlauf.quantity.Refused for whatever is not as it should be; nothing is kept then
   */
  public String take(byte[] zip, String name) {
    return keepContents.keep(source.contents(zip, name)).bench();
  }
}
