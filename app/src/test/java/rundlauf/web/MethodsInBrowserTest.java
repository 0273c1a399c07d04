package rundlauf.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Method pages at a phone's width, at a desk's, and at 400 % zoom, by day and by night. */
class MethodsInBrowserTest {
  private static final Path SHOTS = Path.of("target/shots/methods");

  @TempDir static Path folder;
  private static OpenWorkbook workbook;
  private static Device device;

  @BeforeAll
  static void opened() {
    workbook = OpenWorkbook.empty(folder);
    device = workbook.device();
  }

  @AfterAll
  static void closed() {
    workbook.close();
  }

  @ParameterizedTest
  @CsvSource({
    "side-load, 390, false",
    "side-load, 1280, true",
    "side-load, 320, false",
    "chip, 390, true",
    "chip, 1280, false",
    "chip, 320, true",
    "README, 390, false"
  })
  void readsAtEveryWidth(String name, int width, boolean dark) {
    device.sized(width, dark);
    workbook.go("/method/" + name);
    device.shot(SHOTS.resolve(name + "-" + width + (dark ? "-dark" : "-light") + ".png"));
    assertThat(device.fits()).isTrue();
    assertThat(device.accessibilityFaults()).isEmpty();
    assertThat(device.console()).isEmpty();
  }

  @Test
  void aFractionIsDrawnOneOverTheOther() {
    device.sized(Device.DESK, false);
    workbook.go("/method/chip");
    double over =
        ((Number)
                device.ask(
                    "const [a, b] = document.querySelector('mfrac').children;"
                        + "return b.getBoundingClientRect().top - a.getBoundingClientRect().bottom"))
            .doubleValue();
    assertThat(over).isGreaterThanOrEqualTo(0);
  }

  @Test
  void aLinkLeadsFromPageToPage() {
    device.sized(Device.PHONE, false);
    workbook.go("/method");
    device.press("a[href='/method/runout']");
    device.await("the page of runout", () -> device.text("h1").equals("Runout"));
    assertThat(device.all("math")).isNotEmpty();
  }
}
