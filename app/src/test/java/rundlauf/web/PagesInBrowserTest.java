package rundlauf.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The pages that are read: they fit, they can be used by everybody, and say what they should. */
class PagesInBrowserTest {
  private static final String FIGURE = "/bench/1/trial/9/figure?path=axis.tip.tir";

  @TempDir static Path folder;
  private static OpenWorkbook workbook;
  private static Device device;

  @BeforeAll
  static void opened() throws Exception {
    workbook = OpenWorkbook.planned(folder);
    device = workbook.device();
  }

  @AfterAll
  static void closed() {
    workbook.close();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/bench/1",
        "/bench/1/side-by-side",
        "/bench/1/jobs",
        "/bench/1/publish",
        "/bench",
        "/bench/1/trial/new",
        "/bench/1/trial/new/side-load",
        "/bench/1/trial/9",
        "/bench/1/trial/12",
        "/bench/1/trial/14",
        "/bench/1/trial/15",
        "/bench/1/trial/18",
        FIGURE,
        "/bench/1/trial/4/figure?path=axis.tip.tir",
        "/bench/1/trial/25/figure?path=axis.tip.tir",
      })
  void aPageFitsEveryWidthByDayAndByNight(String path) {
    workbook.read(path);
    for (int width : List.of(Device.ZOOMED, Device.PHONE, Device.DESK)) {
      boolean dark = width == Device.PHONE;
      device.sized(width, dark);
      device.await(path + " fitting " + width, device::fits); // charts follow their page
      assertThat(device.accessibilityFaults()).as(path + " at " + width).isEmpty();
    }
    device.sized(Device.DESK, true);
    assertThat(device.accessibilityFaults("color-contrast")).as(path + " at night").isEmpty();
    assertThat(device.console()).as(path).isEmpty();
  }

  @Test
  void everyChartHasItsNumbersAsText() {
    workbook.read("/bench/1/trial/9");
    assertThat(device.all("figure.chart")).hasSizeGreaterThan(3);
    assertThat(device.all("figure.chart:not(:has(details table td))")).isEmpty();
    assertThat(device.all("figure.chart .plot:not(:has(canvas))")).isEmpty();
  }

  @Test
  void aFoldedCutIsDrawnWhenALinkLeadsToIt() {
    device.sized(Device.DESK, false);
    workbook.read("/bench/1/jobs#job-1-1");
    device.await("the cut", () -> device.all("details.level-4[open] canvas").size() == 2);
    assertThat(device.all("details.level-4[open]")).hasSize(1);
    assertThat(device.all("details.level-4[open] .plot:not(:has(canvas))")).isEmpty();
    assertThat(device.all("details.level-4:not([open]) canvas")).isEmpty();
    device.press("details.level-4:not([open]) summary");
    device.await("its charts", () -> device.all("details.level-4[open] canvas").size() == 4);
  }

  @Test
  void everyFigureLeadsToItsOwnPage() {
    workbook.read("/bench/1/trial/9");
    device.press("a[href$='path=axis.tip.tir']");
    device.await("its page", () -> device.address().endsWith(FIGURE));
    assertThat(device.text("h1")).startsWith("TIR at the tip");
    device.press(".folded:has(tbody tr) summary");
    assertThat(device.all(".folded[open] tbody tr")).hasSize(81);
  }
}
