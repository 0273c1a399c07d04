package rundlauf.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.BooleanSupplier;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.NoSuchElementException;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.support.ui.WebDriverWait;
import rundlauf.Chromium;

/** A device that has the workbook open: a real browser of a phone's or a desk's width. */
public final class Device implements AutoCloseable {
  /** Width of a phone, in CSS pixels. */
  public static final int PHONE = 390;

  /** Width of a desk's screen. */
  public static final int DESK = 1280;

  /** What a desk's screen of 1280 pixels leaves at 400 % zoom (WCAG 2.2, 1.4.10). */
  public static final int ZOOMED = 320;

  private static final Duration PATIENCE = Duration.ofSeconds(20);
  private final ChromeDriver driver;

  private Device(ChromeDriver driver) {
    this.driver = driver;
  }

  /**
   * Opens a browser.
   *
   * @param profile its folder, which outlives it
   */
  public static Device open(Path profile) {
    return new Device(Chromium.start(profile)).sized(PHONE, false);
  }

  /** Of another width, by day or by night. */
  public Device sized(int width, boolean dark) {
    Chromium.size(driver, width, 844, dark);
    return this;
  }

  /** Opens an address. */
  public void go(String address) {
    driver.get(address);
  }

  /** Has a cookie of a page's, as its answer would have set it. */
  public void cookie(String address, String name, String value) {
    driver.executeCdpCommand(
        "Network.setCookie",
        Map.of("url", address, "name", name, "value", value, "httpOnly", true));
  }

  /** Cuts the device off from everything, or joins it again. */
  public void cutOff(boolean cut) {
    driver.executeCdpCommand("Network.enable", Map.of());
    driver.executeCdpCommand(
        "Network.emulateNetworkConditions",
        Map.of("offline", cut, "latency", 0, "downloadThroughput", -1, "uploadThroughput", -1));
  }

  /** Types where the focus is, as a keyboard does. */
  public void type(CharSequence... keys) {
    new Actions(driver).sendKeys(keys).perform();
  }

  /** Types where the focus is and goes on. */
  public void enter(String text) {
    type(text, Keys.ENTER);
  }

  /** Puts a text into the field of a form that has this name. */
  public void fill(String name, String text) {
    ask("document.getElementsByName(arguments[0])[0].value = arguments[1]; return 1", name, text);
  }

  /** What a script gives. */
  public Object ask(String script, Object... args) {
    return Objects.requireNonNull(driver.executeScript(script, args), script);
  }

  /**
   * The text of the first element that a selector finds, as the page shows it at one moment: a page
   * that changes by itself may have put another in its place by the next.
   */
  public String text(String selector) {
    Object text =
        driver.executeScript(
            "return document.querySelector(arguments[0])?.innerText ?? null", selector);
    if (text == null) {
      throw new NoSuchElementException(selector + " at " + address());
    }
    return text.toString().strip();
  }

  /** Presses what a selector finds first, again where the page has just put another there. */
  public void press(String selector) {
    await(
        selector,
        () -> {
          find(selector).click();
          return true;
        });
  }

  /** Presses what leads to another page, and waits until that is there. */
  public void leaveBy(String selector) {
    ask("window.isOld = true; return 1");
    press(selector);
    await(
        "another page",
        () -> (boolean) ask("return !window.isOld && document.readyState === 'complete'"));
  }

  /** An element of a page that does not change by itself. */
  public WebElement find(String selector) {
    return driver.findElement(By.cssSelector(selector));
  }

  public List<WebElement> all(String selector) {
    return driver.findElements(By.cssSelector(selector));
  }

  /**
   * Waits until it is so.
   *
   * @param what for, as the failure words it
   */
  public void await(String what, BooleanSupplier so) {
    new WebDriverWait(driver, PATIENCE, Duration.ofMillis(20))
        .withMessage(() -> what + " did not come at " + address() + "; console: " + console())
        .ignoring(StaleElementReferenceException.class, NoSuchElementException.class)
        .until(d -> so.getAsBoolean());
  }

  /** Where the browser is. */
  public String address() {
    return Objects.requireNonNull(driver.getCurrentUrl());
  }

  /** Whether nothing sticks out sideways. */
  public boolean fits() {
    return (boolean)
        ask(
            "return document.documentElement.scrollWidth"
                + " <= document.documentElement.clientWidth");
  }

  /** What axe finds against WCAG 2.2 A and AA and its own best practices. */
  public List<String> accessibilityFaults() {
    return Chromium.accessibilityFaults(driver);
  }

  /** What axe finds against one of its rules alone. */
  public List<String> accessibilityFaults(String rule) {
    return Chromium.accessibilityFaults(driver, rule);
  }

  /** Everything the page has put on the console since it was last asked. */
  public List<String> console() {
    return Chromium.console(driver);
  }

  /** The whole page as a picture. */
  public void shot(Path file) {
    long height = (Long) ask("return document.documentElement.scrollHeight");
    long width = (Long) ask("return document.documentElement.clientWidth");
    var clip = Map.of("x", 0, "y", 0, "width", width, "height", height, "scale", 1);
    Object data =
        driver
            .executeCdpCommand(
                "Page.captureScreenshot",
                Map.of("format", "png", "captureBeyondViewport", true, "clip", clip))
            .get("data");
    try {
      Files.createDirectories(file.toAbsolutePath().getParent());
      Files.write(file, Base64.getDecoder().decode((String) Objects.requireNonNull(data)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public void close() {
    driver.quit();
  }
}
