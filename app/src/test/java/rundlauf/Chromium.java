package rundlauf;

import com.deque.html.axecore.results.Rule;
import com.deque.html.axecore.selenium.AxeBuilder;
import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/** A headless browser as every test of pages starts it, and what it is asked by all of them. */
public final class Chromium {
  private static final List<String> FLAGS =
      List.of(
          "--headless=new",
          "--no-sandbox",
          "--disable-gpu",
          "--disable-quic",
          "--no-first-run",
          "--disable-background-networking",
          "--disable-component-update",
          "--disable-sync",
          "--disable-dev-shm-usage");

  private Chromium() {}

  /**
   * Starts it.
   *
   * @param profile its folder, which outlives it
   * @param logs the kinds of log that it keeps, beside its console's
   */
  public static ChromeDriver start(Path profile, String... logs) {
    var kept = new LoggingPreferences();
    kept.enable(LogType.BROWSER, Level.ALL);
    for (String log : logs) {
      kept.enable(log, Level.ALL);
    }
    var options = new ChromeOptions();
    options.setBinary("/usr/bin/chromium");
    options.addArguments(FLAGS);
    options.addArguments("--user-data-dir=" + profile);
    options.setCapability(ChromeOptions.LOGGING_PREFS, kept);
    var service =
        new ChromeDriverService.Builder()
            .usingDriverExecutable(new File("/usr/bin/chromedriver"))
            .build();
    return new ChromeDriver(service, options);
  }

  /** Shows its pages at a size, by day or by night; a narrow one is a phone's. */
  public static void size(ChromeDriver driver, int width, int height, boolean dark) {
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", width < 600));
    show(driver, "", dark);
  }

  /**
   * Shows its pages by day or by night.
   *
   * @param medium such as {@code print}; empty text for its own screen
   */
  public static void show(ChromeDriver driver, String medium, boolean dark) {
    var scheme = Map.of("name", "prefers-color-scheme", "value", dark ? "dark" : "light");
    driver.executeCdpCommand(
        "Emulation.setEmulatedMedia", Map.of("media", medium, "features", List.of(scheme)));
  }

  /** Everything the page has put on the console since it was last asked. */
  public static List<String> console(ChromeDriver driver) {
    return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
        .map(LogEntry::getMessage)
        .toList();
  }

  /** What axe finds against WCAG 2.2 A and AA and its own best practices. */
  public static List<String> accessibilityFaults(ChromeDriver driver) {
    return faults(driver, new AxeBuilder());
  }

  /** What axe finds against one of its rules alone. */
  public static List<String> accessibilityFaults(ChromeDriver driver, String rule) {
    return faults(driver, new AxeBuilder().withOnlyRules(List.of(rule)));
  }

  private static List<String> faults(ChromeDriver driver, AxeBuilder axe) {
    return axe.analyze(driver).getViolations().stream().map(Chromium::fault).toList();
  }

  private static String fault(Rule rule) {
    String where = rule.getNodes().isEmpty() ? "" : rule.getNodes().get(0).getHtml();
    return rule.getId() + ": " + rule.getHelp() + " at " + where;
  }
}
