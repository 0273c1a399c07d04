package rundlauf.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import rundlauf.report.BenchReport;

class HtmlReportTest {
  private static String html() {
    return HtmlReport.write(BenchReport.of(InventedBench.results(), InventedJobs.outcomes()));
  }

  @Test
  void isTheSameTextEveryTimeAndInEveryLocale() {
    String first = html();
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-SA-u-nu-arab"));
      assertThat(html()).isEqualTo(first);
      Locale.setDefault(Locale.GERMANY);
      assertThat(html()).isEqualTo(first);
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void namesNothingOutsideItself() {
    String page = html().replace(Inlined.charts().text(), "");
    assertThat(Pattern.compile("(?i)\\b(src|srcset|action)\\s*=\\s*\"").matcher(page).results())
        .isEmpty();
    assertThat(page).doesNotContain("http:").doesNotContain("https:").doesNotContain("@import");
  }

  // source: from memory: W3C Content Security Policy Level 3, hash sources and default-src
  @Test
  void letsNoScriptRunButItsOwn() {
    assertThat(html())
        .contains("default-src &#39;none&#39;; script-src &#39;sha256-")
        .doesNotContain("unsafe-inline")
        .doesNotContain("unsafe-eval");
  }

  @Test
  void putsTheCautionsBeforeAnyFigure() {
    String page = html();
    int held = page.indexOf("Wren is on hold: do not power it");
    assertThat(held).isPositive();
    assertThat(page.indexOf("licensed")).isPositive().isLessThan(page.indexOf("class=\"figure\""));
    assertThat(held).isLessThan(page.indexOf("class=\"figure\""));
    assertThat(page.indexOf("Dunlin has not been inspected"))
        .isPositive()
        .isLessThan(page.indexOf("class=\"figure\""));
  }

  @Test
  void saysThatInventedDataAreInvented() {
    assertThat(html()).contains("Invented demonstration data: nobody has taken these readings.");
  }

  @Test
  void dataCannotEndTheirScript() {
    String page = html();
    int from = page.indexOf("id=\"charts\">");
    int to = page.indexOf("</script>", from);
    assertThat(page.substring(from + 12, to)).startsWith("[{").endsWith("}]").doesNotContain("<");
  }
}
