package rundlauf.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rundlauf.Ran;

/** The pages tell the figures that the commands tell of the same bench, once it is exported. */
class PagesTellTest {
  private static final String BENCH = "The inlay corner of a luthier's workshop (invented)";
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Pattern SHOWN =
      Pattern.compile(
          "<a href=\"/bench/1/trial/(\\d+)/figure\\?path=([^\"]+)\">([-\\d.]+)[^<]*</a>"
              + "<span class=\"doubt\"><span class=\"interval\">([-\\d.]+) to ([-\\d.]+)<");

  @TempDir static Path folder;
  private static WorkbookServed workbook;
  private static Path exported;

  @BeforeAll
  static void open() {
    workbook = WorkbookServed.demo(folder);
    exported = folder.resolve("exported");
    Ran ran = Ran.of("export", exported.toString(), "--bench", BENCH, "--store", workbook.store());
    assertThat(ran.status()).as(ran.err()).isZero();
  }

  @AfterAll
  static void close() {
    workbook.close();
    assertThat(workbook.faults()).isEmpty();
  }

  private static String get(String path) throws IOException, InterruptedException {
    HttpRequest ask =
        HttpRequest.newBuilder(URI.create(workbook.at(path)))
            .header("Accept", "application/json")
            .build();
    return HttpClient.newHttpClient().send(ask, HttpResponse.BodyHandlers.ofString()).body();
  }

  /** Every trial's document, by the trial's number. */
  private static Map<Integer, JsonNode> documents() throws IOException, InterruptedException {
    Map<Integer, JsonNode> documents = new LinkedHashMap<>();
    JsonNode body = JSON.readTree(get("/bench/1/trial/1/figures.json"));
    while (body.has("trial") || !body.at("/error/code").asText().equals("trial-not-kept-there")) {
      documents.put(documents.size() + 1, body);
      body = JSON.readTree(get("/bench/1/trial/" + (documents.size() + 1) + "/figures.json"));
    }
    return documents;
  }

  @Test
  void everyTrialsDocumentIsThatOfItsExportedFile() throws Exception {
    List<String> files = new ArrayList<>(List.of("reduce", "--json"));
    Map<Integer, JsonNode> told = documents();
    for (JsonNode one : told.values()) {
      files.add(exported + "/" + one.path("file").asText());
    }
    List<String> lines = Ran.of(files.toArray(String[]::new)).lines();
    assertThat(lines).hasSize(told.size()).hasSizeGreaterThan(20);
    int number = 0;
    for (JsonNode one : told.values()) {
      JsonNode reduced = JSON.readTree(lines.get(number++));
      assertThat(bare(one)).as(files.get(number + 1)).isEqualTo(bare(reduced));
    }
  }

  /** Without what differs by where the file lies. */
  private static String bare(JsonNode document) {
    ((ObjectNode) document).remove("file");
    return document.has("error")
        ? document.at("/error/code").asText() + document.at("/error/text").asText()
        : document.toString();
  }

  @Test
  void figuresShownAreThoseOfTheDocuments() throws Exception {
    Map<Integer, JsonNode> told = documents();
    int seen = 0;
    for (String page : List.of("/bench/1/figures", "/bench/1/trial/9", "/bench/1/trial/14")) {
      Matcher shown = SHOWN.matcher(get(page));
      while (shown.find()) {
        JsonNode figure =
            figure(
                Objects.requireNonNull(told.get(Integer.parseInt(shown.group(1)))), shown.group(2));
        assertShown(shown.group(3), figure.path("value").asDouble(), page + shown.group(2));
        assertShown(shown.group(4), figure.path("low").asDouble(), page + shown.group(2));
        assertShown(shown.group(5), figure.path("high").asDouble(), page + shown.group(2));
        seen++;
      }
    }
    assertThat(seen).isGreaterThan(40);
  }

  private static JsonNode figure(JsonNode document, String path) {
    String pointer = path.replace("%5B", "/").replace("%5D", "").replace('.', '/');
    JsonNode figure = document.at("/" + pointer);
    assertThat(figure.has("value")).as(path).isTrue();
    return figure;
  }

  /** The digits shown are the number, rounded at the last of them. */
  private static void assertShown(String digits, double value, String what) {
    int point = digits.indexOf('.');
    double step = point < 0 ? 1 : Math.pow(10, point + 1 - digits.length());
    double whole = point < 0 && Math.abs(value) >= 1000 ? 100 : step;
    assertThat(Math.abs(Double.parseDouble(digits) - value))
        .as(what + ": " + digits + " for " + value)
        .isLessThanOrEqualTo(0.5001 * whole);
  }

  @Test
  void sideBySideShowsWhatCompareTells() throws Exception {
    Ran ran = Ran.of("compare", "--json", exported.toString());
    JsonNode setups = JSON.readTree(ran.lines().get(0)).path("setups");
    String page = get("/bench/1/differences");
    int seen = 0;
    for (JsonNode setup : setups) {
      for (String path : List.of("nextClamping.tir", "axis.tip.tir", "stiffness")) {
        JsonNode figure = setup.path("figures").path(path);
        if (figure.hasNonNull("value")) {
          assertThat(anyShown(page, path, figure)).as(setup.path("setup") + " " + path).isTrue();
          seen++;
        }
      }
    }
    assertThat(seen).isGreaterThan(8);
  }

  private static boolean anyShown(String page, String path, JsonNode figure) {
    Matcher shown = SHOWN.matcher(page);
    while (shown.find()) {
      if (shown.group(2).equals(path) && same(shown.group(3), figure.path("value").asDouble())) {
        return true;
      }
    }
    return false;
  }

  private static boolean same(String digits, double value) {
    int point = digits.indexOf('.');
    double step = point < 0 ? 1 : Math.pow(10, point + 1 - digits.length());
    return Math.abs(Double.parseDouble(digits) - value) <= 0.5001 * step;
  }
}
