package rundlauf.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.Keys;

/** The sheet of every kind of trial, as its reader sees it, hears it and reaches it by keyboard. */
class SheetLooksTest {
  /** Pictures for a person to look at; a folder of the build, made anew. */
  private static final Path SHOTS = Path.of("target", "shots", "sheet");

  @TempDir private static Path folder;
  private static OpenWorkbook workbook;
  private static Device device;

  @BeforeAll
  static void opened() {
    workbook = OpenWorkbook.demo(folder);
    device = workbook.device();
  }

  @AfterAll
  static void closed() {
    workbook.close();
  }

  private static OpenSheet begin(String kind) {
    Map<String, String> fields = new LinkedHashMap<>();
    boolean dial = !List.of("speed", "inspection").contains(kind);
    if (dial) {
      fields.put("indicator", "plunger dial");
    }
    if (kind.equals("runout")) {
      fields.put("gauge.diameter", "3 mm");
      fields.put("intended.stations[]", "5 mm");
    }
    if (List.of("side-load", "axial").contains(kind)) {
      fields.put("load", "brass lever");
      fields.put("reference", "table");
    }
    if (kind.equals("side-load")) {
      fields.put("contact", "10 mm");
    }
    device.sized(Device.PHONE, false);
    return OpenSheet.begin(workbook, kind, "Heron 3 mm", fields);
  }

  @ParameterizedTest
  @ValueSource(strings = {"runout", "side-load", "axial", "growth", "speed", "inspection"})
  void isCleanAtEveryWidth(String kind) {
    OpenSheet sheet = begin(kind);
    assertThat(device.all("#drawing svg title")).hasSize(1);
    for (int width : new int[] {Device.PHONE, Device.DESK, Device.ZOOMED}) {
      device.sized(width, width == Device.DESK);
      device.await(kind + " fitting " + width, device::fits);
      assertThat(device.accessibilityFaults()).as(kind + " at " + width).isEmpty();
      device.shot(SHOTS.resolve(kind + "-" + width + ".png"));
    }
    assertThat(sheet.prompt()).isNotEmpty();
    assertThat(device.console()).isEmpty();
  }

  /** A sheet full of readings: plot, figures, struck row, dialog. */
  @Test
  void isCleanWithReadings() {
    OpenSheet sheet = begin("runout");
    for (String reading : List.of("0", "1", "2", "1", "0", "-1", "-2", "-1", "0")) {
      sheet.read(reading);
    }
    sheet.settled(9);
    device.await("the plot", () -> device.all("#so-far canvas").size() == 1);
    device.press("#undo");
    assertThat(device.accessibilityFaults()).isEmpty();
    device.type(Keys.ESCAPE);
    for (int width : new int[] {Device.PHONE, Device.DESK, Device.ZOOMED}) {
      device.sized(width, width == Device.DESK);
      device.await("a taken sheet fitting " + width, device::fits); // its plot follows
      assertThat(device.accessibilityFaults()).isEmpty();
      device.shot(SHOTS.resolve("taken-" + width + ".png"));
    }
  }

  /** With the keyboard alone: begin a trial, read, strike out, say the conditions. */
  @Test
  void isUsedByKeyboardAlone() {
    device.sized(Device.DESK, false);
    workbook.go("/bench/1/trial/new/speed");
    tabTo("field-setup");
    device.type("Heron 3 mm");
    tabTo("field-intended-settings-");
    device.type("20 %; 40 %", Keys.ENTER);
    OpenSheet sheet = OpenSheet.on(device);
    device.await("the first field", () -> focused().equals("ask-0"));
    sheet.read("6000");
    sheet.settled(1);
    tabTo("undo");
    device.type(Keys.ENTER);
    device.await("the dialog", () -> device.all("dialog[open]").size() == 1);
    tabTo("reason");
    device.type("misread", Keys.ENTER);
    device.await("the strike", () -> device.all("#kept li.struck").size() == 1);
    tabTo("field-conditions-warm-up");
    device.type("5 min", Keys.ENTER);
    device.await(
        "what was said",
        () ->
            "5 min"
                .equals(
                    device.ask(
                        "return document.getElementById('field-conditions-warm-up').value")));
  }

  private static String focused() {
    return (String) device.ask("return document.activeElement.id || ''");
  }

  private static void tabTo(String id) {
    for (int i = 0; !focused().equals(id); i++) {
      assertThat(i).as("tabs to " + id).isLessThan(80);
      device.type(Keys.TAB);
    }
  }
}
