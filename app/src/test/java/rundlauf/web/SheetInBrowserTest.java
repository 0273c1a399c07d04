package rundlauf.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A trial is typed into its sheet, with a connection that comes and goes. */
class SheetInBrowserTest {
  @TempDir Path folder;

  @Test
  void nothingIsLostOrDoubledWhenTheConnectionIsCut() {
    try (WorkbookServed workbook = WorkbookServed.demo(folder);
        Device phone = Device.open(folder.resolve("phone"))) {
      phone.go(workbook.at("/bench/1/trial/new/runout?setup=Heron+3+mm"));
      phone.ask("document.getElementById('field-indicator').selectedIndex = 1; return 1");
      phone.ask("document.getElementById('field-gauge-diameter').value = '3 mm'; return 1");
      phone.find("form.start button").click();
      phone.await("the sheet", () -> phone.address().endsWith("/sheet"));
      int[] readings = {10, 20, 30, 20, 10, 0, -10, 0};
      for (int i = 0; i < readings.length; i++) {
        int n = i;
        if (i == 3) {
          phone.cutOff(true);
        }
        if (i == 6) {
          phone.cutOff(false);
        }
        phone.await("the step", () -> phone.text("#count").startsWith("Reading " + (n + 1) + " "));
        phone.enter(Integer.toString(readings[i]));
      }
      phone.await("the readings", () -> phone.all("#kept .rows li").size() == readings.length);
      assertThat(phone.find("#banner").isDisplayed()).isFalse();
      assertThat(phone.console()).allMatch(m -> m.contains("ERR_INTERNET_DISCONNECTED"));
      assertThat(workbook.faults()).isEmpty();
    }
  }
}
