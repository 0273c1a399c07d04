package rundlauf.usecase;

/** Where published pages are kept. */
public interface Publication {
  /**
   * Keeps a page, in place of an older one of the same name.
   *
   * @param name of the page, such as {@code report.html}
   * @param text the whole page
   * @return where it lies, as the user would name it
   * @throws rundlauf.quantity.Refused when it cannot be kept there
   */
  String keep(String name, String text);
}
