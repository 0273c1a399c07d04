package rundlauf.render;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rundlauf.files.DiskTrials;
import rundlauf.files.PublicationFolder;
import rundlauf.maths.Draws;
import rundlauf.maths.Work;
import rundlauf.planning.Planning;
import rundlauf.report.BenchReport;
import rundlauf.usecase.CompareBench;
import rundlauf.usecase.PlanBench;
import rundlauf.usecase.PublishReport;

/** The report as its reader meets it: in a browser, on a phone and a desk, without a network. */
class ReportInBrowserTest {
  private static final int DESK = 1280;

  private static final String WIDER =
      "return document.documentElement.scrollWidth - window.innerWidth";

  private static final String LOST_LINKS =
      "return [...document.querySelectorAll('a')].map(a => a.getAttribute('href'))"
          + ".filter(h => !h.startsWith('#') || !document.getElementById(h.slice(1)))";

  private static final String TWICE =
      "const ids = [...document.querySelectorAll('[id]')].map(e => e.id);"
          + "return ids.filter((id, i) => ids.indexOf(id) !== i)";

  @TempDir static Path folder;
  private static Path page;
  private static Browser browser;

  @BeforeAll
  static void open() throws Exception {
    page = folder.resolve("report.html");
    String html =
        HtmlReport.write(BenchReport.of(InventedBench.results(), InventedJobs.outcomes()));
    Files.writeString(page, html);
    browser = Browser.open(folder.resolve("profile"));
  }

  @AfterAll
  static void close() {
    browser.close();
  }

  // source: axe-core 4.11.1: its rules for W3C WCAG 2.2, levels A and AA
  // source: from memory: W3C WCAG 2.2, 1.4.10: no scrolling sideways
  @ParameterizedTest
  @CsvSource({"360,false", "390,true", "1280,false", "1280,true"})
  void isQuietAccessibleAndFitsItsWidth(int width, boolean dark) {
    browser.show(page, width, dark);
    Object wider = browser.ask("return document.documentElement.scrollWidth - window.innerWidth");
    assertThat((Long) wider).isLessThanOrEqualTo(0);
    assertThat(browser.console()).isEmpty();
    assertThat(browser.requests()).isEmpty();
    assertThat(browser.accessibilityFaults()).isEmpty();
  }

  @Test
  void theDemoBenchFitsAPhoneTooWithEveryLinkInPlace() {
    Draws few = new Draws(Draws.DEFAULT_SEED, 400);
    var results =
        new CompareBench(new DiskTrials(), Work.sequential())
            .compare("../demo/bench", few)
            .results();
    var jobs = new PlanBench(Work.sequential()).plan(results, few, Planning.STATES);
    var demo = new PublishReport(HtmlReport::write, new PublicationFolder(folder.resolve("demo")));
    browser.show(Path.of(demo.publish(results, jobs)), 360, true);
    assertThat((Long) browser.ask(WIDER)).isLessThanOrEqualTo(0);
    assertThat(browser.console()).isEmpty();
    assertThat(browser.requests()).isEmpty();
    assertThat(strings(LOST_LINKS)).isEmpty();
    assertThat(strings(TWICE)).isEmpty();
  }

  @Test
  void aLinkUnfoldsWhatItLeadsTo() {
    browser.show(page, DESK, false);
    String open =
        "return document.getElementById('readings-2-line-6').closest('details').open.toString()";
    assertThat(browser.ask(open)).isEqualTo("false");
    browser.ask("return location.hash = '#readings-2-line-6'");
    browser.await(open, "true");
  }

  @Test
  void everyChartIsDrawnAndNamed() {
    browser.show(page, DESK, false);
    assertThat(strings("return [...document.querySelectorAll('.chart')].map(c => c.id)"))
        .hasSize(22);
    assertThat(
            strings(
                "return [...document.querySelectorAll('.plot')].filter(p => {"
                    + "const c = p.querySelector('canvas'); if (!c) return true;"
                    + "const px = c.getContext('2d').getImageData(0, 0, c.width, c.height).data;"
                    + "return !px.some(v => v > 0) || !p.ariaLabel; }).map(p => p.dataset.chart)"))
        .isEmpty();
  }

  @Test
  void everyLinkLeadsSomewhereInTheSameFile() {
    browser.show(page, DESK, false);
    assertThat(strings(LOST_LINKS)).isEmpty();
    assertThat(strings(TWICE)).isEmpty();
  }

  @Test
  void everyFigureLeadsToItsReadingsAndItsMethod() {
    browser.show(page, DESK, false);
    assertThat(
            strings(
                "return [...document.querySelectorAll('.figure')].filter(f => {"
                    + "const to = [...f.querySelectorAll('a')].map(a => a.getAttribute('href'));"
                    + "return to.length !== 2 || !to[0].startsWith('#readings-')"
                    + " || !to[1].startsWith('#method-'); }).map(f => f.textContent)"))
        .isEmpty();
    assertThat(strings("return [...document.querySelectorAll('.figure')].map(f => f.innerText)"))
        .anyMatch(text -> text.startsWith("97.4\u00a0µm") && text.contains("87.0 to 107.8"));
  }

  @Test
  void everyChartHasATableWithTheSameNumbers() throws Exception {
    browser.show(page, DESK, false);
    String data = (String) browser.ask("return document.getElementById('charts').textContent");
    JsonNode charts = new ObjectMapper().readTree(data);
    assertThat(charts).hasSize(23);
    for (JsonNode chart : charts) {
      List<BigDecimal> told = numbersOfTable(chart.get("id").asText());
      assertThat(told).as(chart.get("id").asText()).containsAll(readings(chart)).isNotEmpty();
    }
  }

  /** The numbers that were read, as the chart has them. */
  private static List<BigDecimal> readings(JsonNode chart) {
    List<BigDecimal> numbers = new ArrayList<>();
    for (JsonNode row : chart.path("rows")) {
      row.get("forces").forEach(n -> numbers.add(plain(n.asText())));
    }
    for (JsonNode tooth : chart.path("teeth")) {
      for (String end : List.of("chip", "low", "high")) {
        numbers.add(plain(tooth.get(end).asText()));
      }
    }
    List<String> rows =
        chart.has("readings") || chart.has("settings")
            ? List.of("angles", "readings", "settings")
            : List.of();
    for (String row : rows) {
      chart.path(row).forEach(n -> numbers.add(plain(n.asText())));
    }
    for (JsonNode loop : chart.path("loops")) {
      loop.get("loads").forEach(n -> numbers.add(plain(n.asText())));
      loop.get("readings").forEach(n -> numbers.add(plain(n.asText())));
    }
    drawn(chart).forEach(n -> numbers.add(plain(n.asText())));
    for (JsonNode bar : chart.path("bars")) {
      numbers.add(plain(bar.get("u").asText()));
      numbers.add(plain(bar.get("share").asText()));
    }
    return numbers;
  }

  /** What a drawing round a centre has that its table has too, in the same digits. */
  private static List<JsonNode> drawn(JsonNode chart) {
    List<JsonNode> all = new ArrayList<>();
    chart.path("marks").forEach(m -> all.add(m.get("angle")));
    chart.path("arrows").forEach(a -> all.add(a.get("length")));
    for (JsonNode circle : chart.path("circles")) {
      all.addAll(List.of(circle.get("along"), circle.get("across")));
    }
    for (JsonNode share : chart.path("shares")) {
      all.addAll(List.of(share.get("share"), share.get("low"), share.get("high")));
    }
    for (JsonNode push : chart.path("pushes")) {
      for (String name : List.of("angle", "compliance", "low", "high")) {
        all.add(push.get(name));
      }
    }
    return all;
  }

  private static List<BigDecimal> numbersOfTable(String chart) {
    return strings(
            "return [...document.querySelectorAll('#"
                + chart
                + " details tbody tr > *, .card:has([data-chart="
                + chart
                + "]) dd')].map(c => c.textContent.trim())")
        .stream()
        .filter(cell -> cell.matches("-?[0-9.]+(°|\u00a0.*)?"))
        .map(cell -> plain(cell.replaceAll("[°\u00a0].*", "")))
        .toList();
  }

  private static BigDecimal plain(String digits) {
    BigDecimal number = new BigDecimal(digits);
    return number.signum() == 0 ? BigDecimal.ZERO : number.stripTrailingZeros();
  }

  @Test
  void whatWasTypedIsShownAndNeverRun() {
    browser.show(page, DESK, false);
    assertThat(browser.ask("return document.querySelectorAll('img').length")).isEqualTo(0L);
    assertThat((String) browser.ask("return document.querySelector('main').textContent"))
        .contains(InventedBench.HOSTILE)
        .contains("=HYPERLINK(1)");
  }

  @SuppressWarnings("unchecked")
  private static List<String> strings(String script) {
    return (List<String>) browser.ask(script);
  }
}
