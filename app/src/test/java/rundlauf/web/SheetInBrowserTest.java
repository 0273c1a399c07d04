package rundlauf.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;
import rundlauf.Ran;

/** Trials are typed into their sheets at a phone's width, over a connection that comes and goes. */
class SheetInBrowserTest {
  private static final String BENCH = "The inlay corner of a luthier's workshop (invented)";

  private static final String FOCUSED =
      "return document.activeElement.closest('figure, [id]')?.id ?? ''";

  @TempDir Path folder;
  private OpenWorkbook workbook;
  private Device phone;

  @BeforeEach
  void open() {
    workbook = OpenWorkbook.demo(folder);
    phone = workbook.device();
  }

  @AfterEach
  void close() {
    workbook.close();
  }

  private OpenSheet runout(int clampings) {
    Map<String, String> fields = new LinkedHashMap<>();
    fields.put("indicator", "plunger dial");
    fields.put("gauge.diameter", "3 mm");
    fields.put("gauge.tip", "25 mm");
    fields.put("intended.stations[]", "5 mm; 20 mm");
    fields.put("intended.clampings", Integer.toString(clampings));
    return OpenSheet.begin(workbook, "runout", "Heron 3 mm", fields);
  }

  /** Divisions of the dial round a turn: an eccentricity of some divisions, as a hand reads it. */
  private static List<String> turn(double divisions) {
    return IntStream.rangeClosed(0, 8)
        .mapToObj(i -> Long.toString(Math.round(divisions * Math.cos(i * Math.PI / 4))))
        .toList();
  }

  @Test
  void aWholeRunoutTrialTellsWhatItsExportedFileTells() throws Exception {
    OpenSheet sheet = runout(1);
    assertThat(sheet.prompt()).contains("5 mm from the nut").contains("Plug pulled");
    List<String> near = turn(2);
    for (int i = 0; i < near.size(); i++) {
      if (i == 3) {
        phone.cutOff(true);
      }
      if (i == 6) {
        assertThat(sheet.away()).isTrue();
        assertThat(sheet.kept()).isLessThanOrEqualTo(3);
        phone.cutOff(false);
      }
      sheet.read(near.get(i));
    }
    sheet.settled(9);
    assertThat(sheet.away()).isFalse();
    assertThat(sheet.prompt()).contains("20 mm");
    for (String reading : turn(4)) {
      sheet.read(reading);
    }
    sheet.settled(18);
    assertThat(phone.text("#count")).isEqualTo("18 readings: all that was intended");
    assertThat(phone.text("#advice")).contains("Not said yet");
    assertSameAsExported(sheet, "heron-3-mm-runout.yaml", "stations");
    double shown = number(phone.text("#so-far .figure a"));
    double tir = figures(sheet).path("stations").path(1).path("tir").path("value").asDouble();
    assertThat(shown).isCloseTo(tir, within(0.05));
  }

  @Test
  void aWholeSideLoadTrialTellsWhatItsExportedFileTells() throws Exception {
    Map<String, String> fields = new LinkedHashMap<>();
    fields.put("indicator", "plunger dial");
    fields.put("load", "brass lever");
    fields.put("contact", "10 mm");
    fields.put("reference", "table");
    OpenSheet sheet = OpenSheet.begin(workbook, "side-load", "Heron 3 mm", fields);
    String[] readings = {"0", "2", "4", "6", "4", "2", "0", "0", "-2", "-4", "-6", "-4", "-2", "0"};
    for (int i = 0; i < readings.length; i++) {
      if (i == 5 || i == 9) {
        phone.cutOff(i == 5);
      }
      sheet.read(readings[i]);
    }
    sheet.settled(readings.length);
    assertSameAsExported(sheet, "heron-3-mm-side-load.yaml", "stiffness");
  }

  private void assertSameAsExported(OpenSheet sheet, String file, String figure) throws Exception {
    String out = folder.resolve("exported-" + figure).toString();
    assertThat(
            Ran.of("export", out, "--bench", BENCH, "--store", workbook.served().store()).status())
        .isZero();
    Ran reduced = Ran.of("reduce", "--json", out + "/trials/" + file);
    JsonNode exported = new ObjectMapper().readTree(reduced.out());
    assertThat(exported.has(figure)).isTrue();
    assertThat(figures(sheet).toString()).isEqualTo(bare(exported).toString());
  }

  /** The figures of the sheet's trial as the workbook gives them, without the file's name. */
  private static JsonNode figures(OpenSheet sheet) throws IOException, InterruptedException {
    HttpRequest ask = HttpRequest.newBuilder(URI.create(sheet.trial() + "/figures.json")).build();
    String body = HttpClient.newHttpClient().send(ask, HttpResponse.BodyHandlers.ofString()).body();
    return bare(new ObjectMapper().readTree(body));
  }

  private static JsonNode bare(JsonNode document) {
    ((ObjectNode) document).remove("file");
    return document;
  }

  private static double number(String shown) {
    return Double.parseDouble(shown.replaceAll("[^\\d.]", ""));
  }

  @Test
  void aReloadAfterTheBenchIsBackResumesAndNothingIsDoubled() {
    OpenSheet sheet = runout(1);
    sheet.read("1");
    sheet.settled(1);
    phone.cutOff(true);
    sheet.read("2");
    sheet.read("3");
    assertThat(phone.text("#banner")).contains("Do not reload").contains("2");
    phone.cutOff(false);
    phone.go(sheet.trial() + "/sheet");
    OpenSheet again = OpenSheet.on(phone);
    again.settled(3);
    assertThat(again.done()).isEqualTo(3);
    assertThat(again.prompt()).isEqualTo("Turn to 135°");
  }

  @Test
  void aBenchThatWasStartedAnewGetsWhatWasTypedMeanwhile() {
    OpenSheet sheet = runout(1);
    sheet.read("1");
    sheet.settled(1);
    Runnable start = workbook.served().stopped();
    sheet.read("2");
    phone.await("the banner", sheet::away);
    sheet.read("1");
    start.run();
    sheet.settled(3);
    assertThat(sheet.away()).isFalse();
  }

  @Test
  void twoDevicesOnOneSheetSeeEachOthersReadings() {
    OpenSheet sheet = runout(1);
    sheet.read("1");
    sheet.settled(1);
    try (Device desk = Device.open(folder.resolve("desk"))) {
      desk.sized(Device.DESK, false).go(sheet.trial() + "/sheet");
      OpenSheet other = OpenSheet.on(desk);
      other.settled(1);
      sheet.read("2");
      other.settled(2);
      assertThat(other.prompt()).isEqualTo("Turn to 90°");
      other.read("3");
      sheet.settled(3);
      assertThat(sheet.prompt()).isEqualTo("Turn to 135°");
    }
  }

  @Test
  void whatAnotherDeviceReadsLeavesTheFocusAndWhatIsUnfolded() {
    OpenSheet sheet = runout(1);
    sheet.read("1");
    sheet.read("3");
    sheet.settled(2);
    phone.await("the drawing", () -> !phone.all("#chart-begun canvas").isEmpty());
    phone.press("#chart-begun summary");
    phone.ask("document.querySelector('#advice').firstElementChild.here = true; return 1");
    try (Device desk = Device.open(folder.resolve("desk"))) {
      desk.go(sheet.trial() + "/sheet");
      OpenSheet other = OpenSheet.on(desk);
      other.read("4");
      sheet.settled(3);
      assertThat(phone.ask(FOCUSED)).isEqualTo("chart-begun");
      phone.ask("document.querySelectorAll('[data-strike]')[1].focus(); return 1");
      Object row = phone.ask("return document.activeElement.dataset.strike");
      other.read("2");
      sheet.settled(4);
      assertThat(phone.ask("return document.activeElement.dataset.strike")).isEqualTo(row);
    }
    assertThat(phone.ask("return document.querySelector('#chart-begun details').open"))
        .isEqualTo(true);
    // a screen reader hears it once
    assertThat(
            phone.ask("return document.querySelector('#advice').firstElementChild.here === true"))
        .isEqualTo(true);
  }

  @Test
  void aFaultThatAnotherDeviceFindsIsToldAtOnce() {
    OpenSheet sheet = runout(1);
    assertThat(phone.text("#standing")).isEmpty();
    try (Device desk = Device.open(folder.resolve("desk"))) {
      desk.go(sheet.trial().replaceFirst("/trial/.*", "/trial/new/inspection"));
      OpenSheet.begin(desk, Map.of("setup", "Heron 3 mm"));
      desk.press("#fields input[value='fault']");
      desk.type(Keys.ENTER);
      phone.await("the hold", () -> phone.text("#standing").contains("Heron must not be powered"));
    }
  }

  @Test
  void whatCannotBeReadIsRefusedAtTheFieldAndStandsThereStill() {
    OpenSheet sheet = runout(1);
    phone.enter("1.55");
    phone.await("the refusal", () -> !phone.text("#refusal").isEmpty());
    assertThat(phone.text("#refusal"))
        .isEqualTo(
            "The reading \"1.55 div\" does not lie on the steps of 0.01 mm that this indicator is"
                + " read to. Correct the reading, or say in the indicator what readings are rounded"
                + " to: \"read-to: 0.005 mm\" if you read half steps.");
    assertThat(phone.ask("return document.activeElement.value")).isEqualTo("1.55");
    assertThat(phone.ask("return document.activeElement.getAttribute('aria-invalid')"))
        .isEqualTo("true");
    phone.type(Keys.BACK_SPACE, Keys.BACK_SPACE, Keys.BACK_SPACE);
    sheet.read("");
    sheet.settled(1);
  }

  @Test
  void aStruckReadingStaysWithItsReasonAndIsAskedAgain() {
    OpenSheet sheet = runout(1);
    sheet.read("1");
    sheet.read("20");
    sheet.settled(2);
    phone.press("#undo");
    phone.press("[data-reason='misread']");
    phone.press("#strike-form button.first");
    phone.await("the strike", () -> phone.all("#kept li.struck").size() == 1);
    assertThat(phone.text("#kept li.struck")).contains("20").contains("struck out: misread");
    phone.await("the step again", () -> sheet.prompt().equals("Turn to 45°"));
    sheet.read("2");
    sheet.settled(3);
    phone.go(sheet.trial());
    assertThat(phone.text("main")).contains("Struck out").contains("misread");
  }

  @Test
  void aTurnThatWasBegunIsDrawnAsDotsUntilItTellsACircle() {
    OpenSheet sheet = runout(1);
    sheet.read("1");
    sheet.read("4");
    sheet.settled(2);
    phone.await("the drawing", () -> !phone.all("#so-far [id='chart-begun'] canvas").isEmpty());
    assertThat(phone.text("#so-far")).contains("The turn being read 5 mm from the nut");
    assertThat((String) phone.ask("return document.querySelector('#so-far').innerHTML"))
        .contains("2 readings as dots"); // for whoever does not see them
    assertThat(phone.fits()).isTrue();
    assertThat(phone.accessibilityFaults()).isEmpty();
    phone.shot(Path.of("target", "look", "begun-turn.png"));
    for (String reading : List.of("3", "1", "0")) {
      sheet.read(reading);
    }
    sheet.settled(5);
    phone.await("a figure", () -> phone.all("#so-far [id='chart-begun']").isEmpty());
    assertThat(phone.console()).isEmpty();
  }

  @Test
  void theKeypadTypesAsTheKeyboardDoes() {
    OpenSheet sheet = runout(1);
    for (String key : List.of("1", "2", "back", "sign", ".", "0")) {
      phone.press("[data-key='" + key + "']");
    }
    assertThat(phone.ask("return document.activeElement.value")).isEqualTo("-1.0");
    sheet.read("");
    sheet.settled(1);
    assertThat(phone.text("#kept b")).isEqualTo("-1.0");
  }
}
