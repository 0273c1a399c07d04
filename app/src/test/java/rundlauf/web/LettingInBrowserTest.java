package rundlauf.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.file.Path;
import java.util.Map;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;
import org.openqa.selenium.OutputType;

/** A phone is let in from the bench's own screen, and shut out again. */
class LettingInBrowserTest {
  private static final Path SHOTS = Path.of("target", "screenshots");

  @TempDir Path folder;
  private OutsideServed workbook;
  private Device browser;

  @BeforeEach
  void open() {
    workbook = new OutsideServed(folder);
    browser = Device.open(folder.resolve("profile"));
  }

  @AfterEach
  void close() {
    browser.close();
    workbook.close();
    assertThat(workbook.faults()).isEmpty();
  }

  private String here(String path) {
    return workbook.at(OutsideServed.HERE, path);
  }

  private String outside(String path) {
    return workbook.at(OutsideServed.OUTSIDE, path);
  }

  /** On a phone, on a desk by night, and zoomed. */
  private void looksRight(String name) {
    for (int width : new int[] {Device.PHONE, Device.DESK, Device.ZOOMED}) {
      browser.sized(width, width == Device.DESK);
      assertThat(browser.fits()).as(name + " at " + width).isTrue();
      assertThat(browser.accessibilityFaults()).as(name + " at " + width).isEmpty();
      browser.shot(SHOTS.resolve(name + "-" + width + ".png"));
    }
    browser.sized(Device.PHONE, false);
  }

  private String drawn() throws Exception {
    byte[] png = browser.find("svg.qr").getScreenshotAs(OutputType.BYTES);
    BufferedImage image = ImageIO.read(new ByteArrayInputStream(png));
    int width = image.getWidth();
    int height = image.getHeight();
    int[] pixels = image.getRGB(0, 0, width, height, null, 0, width);
    var source = new RGBLuminanceSource(width, height, pixels);
    return new QRCodeReader().decode(new BinaryBitmap(new HybridBinarizer(source))).getText();
  }

  @Test
  void aPhoneIsLetInAndShutOut() throws Exception {
    browser.go(here("/devices"));
    looksRight("devices");
    browser.press("form[action='/devices/code'] button");
    browser.await("the code", () -> !browser.all(".code").isEmpty());
    String code = browser.text(".code");
    looksRight("devices-code");
    // source: recomputed: the drawing is read back from a picture of the page (ZXing's reader)
    assertThat(drawn()).endsWith("/let-in?code=" + code.replace(" ", ""));

    browser.go(outside("/bench/1"));
    assertThat(browser.address()).endsWith("/let-in");
    looksRight("let-in");
    browser.find("#code").sendKeys("wrong", Keys.ENTER);
    browser.await("the refusal", () -> browser.text("#refusal").contains("not the code"));
    looksRight("let-in-refused");
    browser.go(outside("/let-in?code=" + code.replace(" ", "")));
    browser.press("form.letting button");
    browser.await("the bench", () -> browser.address().endsWith("/bench/1"));
    assertThat(browser.text("h1")).contains("luthier");
    assertThat(browser.all(".head a[href='/devices']")).isEmpty();

    browser.go(here("/bench/1"));
    browser.press(".head a[href='/devices']");
    browser.await("the device", () -> browser.text(".devices li").contains("Chrome on Linux"));
    looksRight("devices-inside");
    browser.press("#out-1");
    browser.await("nobody", () -> browser.all(".devices li").isEmpty());
    browser.go(outside("/bench/1"));
    assertThat(browser.address()).endsWith("/let-in");
  }

  @Test
  void theBenchsScreenShowsByItselfThatTheDeviceIsIn() {
    browser.go(here("/devices"));
    browser.press("form[action='/devices/code'] button");
    browser.await("the code", () -> !browser.all(".code").isEmpty());
    assertThat(workbook.typed(browser.text(".code")).status()).isEqualTo(303);
    browser.await("the device", () -> browser.all(".devices li").size() == 1);
    assertThat(browser.all(".code")).isEmpty();
  }

  @Test
  void aSheetSaysThatItsDeviceWasShutOutAndGoesOnOnceItIsBack() {
    String in = workbook.typed(workbook.code()).cookie().replace("rundlauf=", "");
    browser.go(outside("/let-in"));
    cookie(in);
    browser.go(outside("/bench/1/trial/new/runout?setup=Heron%203%20mm"));
    OpenSheet sheet =
        OpenSheet.begin(
            browser,
            Map.of(
                "indicator", "plunger dial",
                "gauge.diameter", "3 mm",
                "gauge.tip", "25 mm",
                "intended.stations[]", "5 mm; 20 mm",
                "intended.clampings", "1"));
    sheet.read("0");
    sheet.settled(1);

    shutOutAll();
    sheet.read("1");
    browser.await(
        "the banner", () -> browser.text("#banner").startsWith("This device is let in no longer"));
    assertThat(browser.find("#let-in").isDisplayed()).isTrue();
    assertThat(browser.accessibilityFaults()).isEmpty();
    browser.shot(SHOTS.resolve("sheet-out.png"));
    assertThat(sheet.kept()).isEqualTo(1);

    cookie(workbook.typed(workbook.code()).cookie().replace("rundlauf=", ""));
    sheet.settled(2);
    assertThat(browser.find("#let-in").isDisplayed()).isFalse();
  }

  /** What letting it in in another tab would leave behind. */
  private void cookie(String value) {
    browser.cookie(outside("/"), "rundlauf", value);
  }

  private void shutOutAll() {
    Asked page = workbook.get(OutsideServed.HERE, "/devices", Map.of());
    workbook.post(
        OutsideServed.HERE,
        "/devices/1/out",
        Map.of("Cookie", page.cookie()),
        "token=" + page.token());
  }
}
