package rundlauf.render.workbook;

import java.util.List;
import rundlauf.quantity.Saying;
import rundlauf.render.Wording;

/**
 * What stands round every page of the workbook.
 *
 * @param title of the page
 * @param links to the other pages of this bench; none where no bench is meant
 * @param token that changes made from this page carry
 * @param charts of the page as a JSON list
 * @param standing what must be said of the spindle that the page is about
 */
public record Shell(
    String title,
    List<Link> links,
    String token,
    String charts,
    Wording words,
    List<Saying> standing) {
  /** The charts of a page that has none. */
  public static final String NO_CHARTS = "[]";

  /** The scripts of a page that has some. */
  public static final List<String> CHARTED = List.of("echarts.js", "report.js");

  /** The scripts of a sheet. */
  public static final List<String> SHEET =
      List.of("echarts.js", "report.js", "queue.js", "sheet.js");

  public Shell {
    standing = List.copyOf(standing);
    links = List.copyOf(links);
  }

  /**
   * A way to another page.
   *
   * @param here whether it is the one that is open
   */
  public record Link(String text, String href, boolean here) {}

  /** The same page with this said of its spindle. */
  public Shell saying(List<Saying> standing) {
    return new Shell(title, links, token, charts, words, standing);
  }

  /** The address of a script or style sheet, another one whenever it changes. */
  public String asset(String name) {
    return Assets.address(name);
  }
}
