package rundlauf.render;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.support.ui.WebDriverWait;
import rundlauf.Chromium;

/** A headless browser without network, for looking at a page as its reader would. */
final class Browser implements AutoCloseable {
  private final ChromeDriver driver;

  private Browser(ChromeDriver driver) {
    this.driver = driver;
  }

  static Browser open(Path profile) {
    ChromeDriver driver = Chromium.start(profile, LogType.PERFORMANCE);
    driver.executeCdpCommand("Network.enable", Map.of());
    driver.executeCdpCommand(
        "Network.emulateNetworkConditions",
        Map.of("offline", true, "latency", 0, "downloadThroughput", 0, "uploadThroughput", 0));
    return new Browser(driver);
  }

  /** Shows a page at a width, by day or by night. */
  void show(Path page, int width, boolean dark) {
    Chromium.size(driver, width, 900, dark);
    driver.get(page.toUri().toString());
  }

  /** Shows the page as it would be printed, or on the screen again. */
  void print(boolean printed, boolean dark) {
    Chromium.show(driver, printed ? "print" : "", dark);
  }

  /** The page as a PDF of the given size in inches, in Base64. */
  String pdf(double width, double height) {
    return Objects.requireNonNull(
        (String)
            driver
                .executeCdpCommand(
                    "Page.printToPDF", Map.of("paperWidth", width, "paperHeight", height))
                .get("data"));
  }

  /** What a script gives. */
  Object ask(String script) {
    return Objects.requireNonNull(driver.executeScript(script), script);
  }

  /** Waits until a script gives {@code wanted}. */
  void await(String script, Object wanted) {
    new WebDriverWait(driver, Duration.ofSeconds(10)).until(d -> wanted.equals(ask(script)));
  }

  /** Everything the page has put on the console since it was last asked. */
  List<String> console() {
    return Chromium.console(driver);
  }

  /** What went over the wire since it was last asked: file, data and browser pages are not. */
  List<String> requests() {
    return driver.manage().logs().get(LogType.PERFORMANCE).getAll().stream()
        .map(LogEntry::getMessage)
        .filter(m -> m.contains("Network.requestWillBeSent\""))
        .filter(m -> m.contains("\"url\":\"http") || m.contains("\"url\":\"ws"))
        .toList();
  }

  /** What axe finds against WCAG 2.2 A and AA and its own best practices. */
  List<String> accessibilityFaults() {
    return Chromium.accessibilityFaults(driver);
  }

  @Override
  public void close() {
    driver.quit();
  }
}
