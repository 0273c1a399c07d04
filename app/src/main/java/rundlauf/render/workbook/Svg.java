package rundlauf.render.workbook;

import java.util.Locale;

/** A line drawing in SVG; strokes and fills come from the page's style sheet. */
final class Svg {
  private final StringBuilder out = new StringBuilder();
  private final int width;
  private final int height;

  Svg(int width, int height) {
    this.width = width;
    this.height = height;
  }

  /** The drawing under a title that is read out in its place. */
  String titled(String title) {
    return String.format(
            Locale.ROOT,
            "<svg viewBox=\"0 0 %d %d\" role=\"img\" xmlns=\"http://www.w3.org/2000/svg\">"
                + "<title>%s</title>",
            width,
            height,
            escaped(title))
        + out
        + "</svg>";
  }

  Svg line(String look, double x1, double y1, double x2, double y2) {
    return add("<path class=\"%s\" d=\"M%.1f %.1fL%.1f %.1f\"/>", look, x1, y1, x2, y2);
  }

  Svg box(String look, double x, double y, double w, double h) {
    return add(
        "<rect class=\"%s\" x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\"/>",
        look, x, y, w, h);
  }

  Svg circle(String look, double x, double y, double r) {
    return add("<circle class=\"%s\" cx=\"%.1f\" cy=\"%.1f\" r=\"%.1f\"/>", look, x, y, r);
  }

  /** A path as it is written. */
  Svg path(String look, String d) {
    out.append("<path class=\"").append(look).append("\" d=\"").append(d).append("\"/>");
    return this;
  }

  /** An arrow; its head at the second point. */
  Svg arrow(String look, double x1, double y1, double x2, double y2) {
    double along = Math.atan2(y2 - y1, x2 - x1);
    line(look, x1, y1, x2, y2);
    for (double side : new double[] {2.6, -2.6}) {
      line(look, x2, y2, x2 + 8 * Math.cos(along + side), y2 + 8 * Math.sin(along + side));
    }
    return this;
  }

  /** Text that begins, is centred or ends at a point: {@code start middle end}. */
  Svg text(String anchor, double x, double y, String text) {
    return add(
        "<text class=\"d-text\" text-anchor=\"%s\" x=\"%.1f\" y=\"%.1f\">%s</text>",
        anchor, x, y, escaped(text));
  }

  private Svg add(String format, Object... args) {
    out.append(String.format(Locale.ROOT, format, args));
    return this;
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
