package rundlauf.render.methods;

import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Link;
import org.commonmark.node.Node;

/**
 * Links between the pages lead to the workbook's; what lies elsewhere in the sources is named only.
 */
final class PageLinks extends AbstractVisitor {
  @Override
  public void visit(Link link) {
    String to = link.getDestination();
    if (to.matches("[A-Za-z-]+\\.md(#.*)?")) {
      link.setDestination("/method/" + to.replaceFirst("\\.md", ""));
    } else if (!to.startsWith("#") && !to.startsWith("https://")) {
      unfold(link);
    }
  }

  /** Leaves the text of a link that leads nowhere here. */
  private static void unfold(Link link) {
    Node child = link.getFirstChild();
    while (child != null) {
      Node next = child.getNext();
      link.insertBefore(child);
      child = next;
    }
    link.unlink();
  }
}
