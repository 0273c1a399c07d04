package rundlauf.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rundlauf.report.BenchReport;

/** The report's drawings and colours: by day, by night and on paper. */
class ReportOnPaperTest {
  private static final int DESK = 1280;

  /** Relative luminance and contrast of two colours of the style sheet. */
  private static final String CONTRAST =
      """
      const value = name => getComputedStyle(document.documentElement).getPropertyValue('--' + name).trim();
      const lum = hex => {
        const long = hex.length === 4 ? '#' + [...hex.slice(1)].map(d => d + d).join('') : hex;
        const [r, g, b] = [1, 3, 5].map(i => parseInt(long.slice(i, i + 2), 16) / 255)
          .map(c => c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4);
        return 0.2126 * r + 0.7152 * g + 0.0722 * b; };
      const contrast = (a, b) => {
        const [x, y] = [lum(value(a)), lum(value(b))].sort((p, q) => q - p);
        return (x + 0.05) / (y + 0.05); };
      """;

  /** How many pixels of a canvas are as dark as its strokes on paper, and how many nearly white. */
  private static final String SHADES =
      """
      const c = document.querySelector('#chart-2-clocking-set canvas');
      const px = c.getContext('2d').getImageData(0, 0, c.width, c.height).data;
      let dark = 0; let light = 0;
      for (let i = 0; i < px.length; i += 4) {
        if (px[i + 3] > 200) { const l = px[i] + px[i + 1] + px[i + 2]; if (l < 240) dark++; if (l > 650) light++; }
      }
      """;

  @TempDir static Path folder;
  private static Path page;
  private static Browser browser;

  @BeforeAll
  static void open() throws Exception {
    page = folder.resolve("report.html");
    Files.writeString(
        page, HtmlReport.write(BenchReport.of(InventedBench.results(), InventedJobs.outcomes())));
    browser = Browser.open(folder.resolve("profile"));
  }

  @AfterAll
  static void close() {
    browser.close();
  }

  // source: W3C WCAG 2.2, 1.4.3 and 1.4.11: text 4.5 : 1, marks 3 : 1; relative luminance as
  // defined
  @ParameterizedTest
  @CsvSource({"false,false", "true,false", "false,true", "true,true"})
  void textAndMarksStandOffTheirGround(boolean dark, boolean printed) {
    browser.show(page, DESK, dark);
    browser.print(printed, dark);
    assertThat(
            strings(
                CONTRAST
                    + "return ['ink', 'soft', 'link', 'caution'].flatMap(t =>"
                    + " ['paper', 'sheet', 'caution-paper'].filter(g => contrast(t, g) < 4.5)"
                    + ".map(g => t + ' on ' + g))"))
        .isEmpty();
    assertThat(
            strings(
                CONTRAST
                    + "return ['fit', 'band', 'reading', 'bar', 'soft']"
                    + ".filter(m => contrast(m, 'sheet') < 3)"))
        .isEmpty();
    browser.print(false, dark);
  }

  @Test
  void paperIsWhiteAndItsStrokesDarkWhateverTheScreen() {
    browser.show(page, DESK, true);
    assertThat((Long) browser.ask(SHADES + "return light")).isPositive();
    browser.print(true, true);
    browser.await("return document.documentElement.classList.contains('printed')", true);
    assertThat(browser.ask("return getComputedStyle(document.documentElement).backgroundColor"))
        .isEqualTo("rgb(255, 255, 255)");
    assertThat((Long) browser.ask(SHADES + "return light")).isZero();
    assertThat((Long) browser.ask(SHADES + "return dark")).isGreaterThan(500L);
    browser.print(false, true);
    browser.await("return document.documentElement.classList.contains('printed')", false);
    assertThat((Long) browser.ask(SHADES + "return light")).isPositive();
  }

  @Test
  void figuresFoldedAwayOnTheScreenArePrintedAndFoldedAgain() {
    browser.show(page, DESK, false);
    String open =
        "return [...document.querySelectorAll('.folded')].filter(e => e.querySelector('.figures'))"
            + ".map(e => String(e.open))";
    assertThat(strings(open)).isNotEmpty().containsOnly("false");
    browser.print(true, false);
    browser.await("return document.documentElement.classList.contains('printed')", true);
    assertThat(strings(open)).containsOnly("true");
    browser.print(false, false);
    browser.await("return document.documentElement.classList.contains('printed')", false);
    assertThat(strings(open)).containsOnly("false");
  }

  /** A4 and Letter between margins of 12 mm, in CSS pixels. */
  @ParameterizedTest
  @ValueSource(ints = {703, 725})
  void nothingIsWiderThanThePaper(int width) {
    browser.show(page, width, false);
    browser.print(true, false);
    browser.await("return document.documentElement.classList.contains('printed')", true);
    assertThat(
            (Long) browser.ask("return document.documentElement.scrollWidth - window.innerWidth"))
        .isLessThanOrEqualTo(0L);
    assertThat(
            strings(
                "return [...document.querySelectorAll('td, th, canvas, .card')]"
                    + ".filter(e => e.getBoundingClientRect().right > window.innerWidth + 1)"
                    + ".map(e => e.outerHTML.slice(0, 80))"))
        .isEmpty();
    browser.print(false, false);
  }

  @ParameterizedTest
  @CsvSource({"8.27,11.69", "8.5,11"})
  void theCardGetsAPageOfItsOwn(double width, double height) {
    browser.show(page, DESK, false);
    assertThat(strings("return [...document.querySelectorAll('.card dd')].map(e => e.innerText)"))
        .contains("135°", "48°");
    browser.print(true, false);
    assertThat(
            strings(
                "const s = getComputedStyle(document.querySelector('.card'));"
                    + "return [s.breakBefore, s.breakAfter, s.breakInside]"))
        .containsExactly("page", "page", "avoid");
    browser.print(false, false);
    int with = pages(browser.pdf(width, height));
    browser.ask("document.querySelector('.card').remove(); return true");
    assertThat(with).isGreaterThan(pages(browser.pdf(width, height)));
  }

  /** A page object of a PDF: its type is neither that of the tree of pages nor another's. */
  private static int pages(String pdf) {
    String text = new String(Base64.getDecoder().decode(pdf), StandardCharsets.ISO_8859_1);
    return text.split("/Type\\s*/Page[^s]", -1).length - 1;
  }

  @Test
  void aCardIsPrintedAlone() {
    browser.show(page, DESK, false);
    browser.ask(
        "window.seen = ''; window.print = () => {"
            + " const h = document.documentElement;"
            + " window.seen = h.classList.contains('one-card') + ' '"
            + " + document.querySelectorAll('body > .card').length;"
            + " dispatchEvent(new Event('afterprint')); };"
            + "document.querySelector('.card .print').click(); return true");
    assertThat(browser.ask("return window.seen")).isEqualTo("true 1");
    assertThat(browser.ask("return document.querySelectorAll('body > .card').length"))
        .isEqualTo(0L);
  }

  @SuppressWarnings("unchecked")
  private static List<String> strings(String script) {
    return (List<String>) browser.ask(script);
  }
}
