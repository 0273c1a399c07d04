package rundlauf.render.methods;

import java.util.Map;
import java.util.Set;
import org.commonmark.node.Code;
import org.commonmark.node.IndentedCodeBlock;
import org.commonmark.node.Node;
import org.commonmark.renderer.NodeRenderer;
import org.commonmark.renderer.html.HtmlNodeRendererContext;
import org.commonmark.renderer.html.HtmlWriter;

/** Writes formulas as MathML, and what else stands as code as it is. */
final class FormulaRenderer implements NodeRenderer {
  /** Characters that fit on the narrowest page; longer ones may scroll, by keyboard too. */
  private static final int NARROW = 24;

  private final HtmlWriter html;

  FormulaRenderer(HtmlNodeRendererContext context) {
    this.html = context.getWriter();
  }

  @Override
  public Set<Class<? extends Node>> getNodeTypes() {
    return Set.of(Code.class, IndentedCodeBlock.class);
  }

  @Override
  public void render(Node node) {
    if (node instanceof Code code) {
      inline(code.getLiteral());
    } else {
      block(((IndentedCodeBlock) node).getLiteral());
    }
  }

  private void inline(String code) {
    if (Formula.is(code)) {
      String reached = code.length() > NARROW ? " tabindex=\"0\"" : "";
      html.raw("<span class=\"formula\"" + reached + ">" + Formula.mathMl(code, false) + "</span>");
    } else {
      html.tag("code");
      html.text(code);
      html.tag("/code");
    }
  }

  /** Each line has formulas of its own, far apart where there are several. */
  private void block(String lines) {
    html.line();
    html.tag("div", Map.of("class", "formulas", "tabindex", "0"));
    for (String line : lines.split("\n", -1)) {
      if (!line.isBlank()) {
        html.tag("p");
        for (String formula : line.strip().split("\\s{2,}+(?!=)", -1)) {
          html.raw(Formula.mathMl(formula, true));
        }
        html.tag("/p");
      }
    }
    html.tag("/div");
    html.line();
  }
}
