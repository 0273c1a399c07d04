package rundlauf.render;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import rundlauf.report.Report;

/** A report as one HTML file that loads nothing from anywhere. */
public final class HtmlReport {
  private static final TemplateEngine PAGES = TemplateEngine.createPrecompiled(ContentType.Html);

  private HtmlReport() {}

  /** The whole file; the same text for the same report. */
  public static String write(Report report) {
    Wording words = new Wording();
    StringOutput out = new StringOutput();
    PAGES.render("report/page.jte", new Page(report, words, ChartData.of(report, words)), out);
    return out.toString();
  }
}
