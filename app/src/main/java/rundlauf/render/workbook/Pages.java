package rundlauf.render.workbook;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.Map;

/** Makes pages of the workbook. */
public final class Pages {
  private static final TemplateEngine ENGINE = TemplateEngine.createPrecompiled(ContentType.Html);

  private Pages() {}

  /**
   * A page or a piece of one.
   *
   * @param template its name under {@code jte/workbook}, without the ending
   * @param given its parameters by name
   */
  public static String of(String template, Map<String, Object> given) {
    StringOutput out = new StringOutput();
    ENGINE.render("workbook/" + template + ".jte", given, out);
    return out.toString();
  }
}
