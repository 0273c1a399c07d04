package rundlauf.render.methods;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.commonmark.Extension;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.Heading;
import org.commonmark.node.Node;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;

/**
 * A page that tells how figures are made.
 *
 * @param title its first heading
 * @param html the page below that heading; whatever HTML its source had is shown, not run
 */
public record MethodPage(String title, String html) {
  /** The page that lists all others. */
  public static final String INDEX = "README";

  private static final List<Extension> EXTENSIONS = List.of(TablesExtension.create());
  private static final Parser PARSER = Parser.builder().extensions(EXTENSIONS).build();
  private static final HtmlRenderer RENDERER =
      HtmlRenderer.builder()
          .extensions(EXTENSIONS)
          .escapeHtml(true)
          .sanitizeUrls(true)
          .nodeRendererFactory(FormulaRenderer::new)
          .build();

  /** The page of this name; empty when there is none. */
  public static Optional<MethodPage> of(String name) {
    return name.matches("[A-Za-z-]{1,60}") ? source(name).map(MethodPage::page) : Optional.empty();
  }

  private static Optional<String> source(String name) {
    try (InputStream in =
        MethodPage.class.getResourceAsStream("/rundlauf/methods/" + name + ".md")) {
      return in == null
          ? Optional.empty()
          : Optional.of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static MethodPage page(String markdown) {
    Node document = PARSER.parse(markdown);
    document.accept(new PageLinks());
    String title = "";
    if (document.getFirstChild() instanceof Heading heading) {
      title = heading.getFirstChild() instanceof Text text ? text.getLiteral() : "";
      heading.unlink();
    }
    return new MethodPage(title, RENDERER.render(document));
  }
}
