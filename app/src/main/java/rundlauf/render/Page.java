package rundlauf.render;

import rundlauf.report.Report;

/**
 * What the page's template is given.
 *
 * @param data the charts as JSON
 * @param charts the chart library
 * @param drawing our own script
 */
public record Page(
    Report report, Wording words, String data, Inlined charts, Inlined drawing, Inlined style) {

  Page(Report report, Wording words, String data) {
    this(report, words, data, Inlined.charts(), Inlined.drawing(), Inlined.style());
  }

  /** Nothing is loaded, nothing is sent, and no script or style but the page's own counts. */
  public String policy() {
    return "default-src 'none'; script-src "
        + charts.source()
        + " "
        + drawing.source()
        + "; style-src "
        + style.source()
        + "; img-src data:; base-uri 'none'; form-action 'none'";
  }
}
