package rundlauf.render.workbook;

import java.util.List;
import rundlauf.render.Wording;

/**
 * What stands round every page of the workbook.
 *
 * @param title of the page
 * @param links to the other pages of this bench; none where no bench is meant
 * @param token that changes made from this page carry
 * @param charts of the page as a JSON list
 */
public record Shell(String title, List<Link> links, String token, String charts, Wording words) {
  public Shell {
    links = List.copyOf(links);
  }

  /**
   * A way to another page.
   *
   * @param here whether it is the one that is open
   */
  public record Link(String text, String href, boolean here) {}

  /** The address of a script or style sheet, another one whenever it changes. */
  public String asset(String name) {
    return Assets.address(name);
  }
}
