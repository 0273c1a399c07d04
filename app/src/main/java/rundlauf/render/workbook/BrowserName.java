package rundlauf.render.workbook;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Saying;
import rundlauf.render.Sentences;

/** A short name for a browser, from the long one that it sends; any device may say anything. */
final class BrowserName {
  /** What tells a browser; each also names those below it, so the first one found counts. */
  private static final Map<String, String> BROWSERS = new LinkedHashMap<>();

  private static final Map<String, String> SYSTEMS = new LinkedHashMap<>();

  static {
    BROWSERS.put("Firefox/", "Firefox");
    BROWSERS.put("FxiOS/", "Firefox");
    BROWSERS.put("EdgA/", "Edge");
    BROWSERS.put("Edg/", "Edge");
    BROWSERS.put("OPR/", "Opera");
    BROWSERS.put("SamsungBrowser/", "Samsung Internet");
    BROWSERS.put("CriOS/", "Chrome");
    BROWSERS.put("Chrome/", "Chrome");
    BROWSERS.put("Safari/", "Safari");
    SYSTEMS.put("iPhone", "iPhone");
    SYSTEMS.put("iPad", "iPad");
    SYSTEMS.put("Android", "Android");
    SYSTEMS.put("Windows", "Windows");
    SYSTEMS.put("Macintosh", "macOS");
    SYSTEMS.put("CrOS", "ChromeOS");
    SYSTEMS.put("Linux", "Linux");
  }

  private BrowserName() {}

  static String of(String agent) {
    Optional<String> browser = first(BROWSERS, agent);
    Optional<String> system = first(SYSTEMS, agent);
    if (browser.isEmpty() || system.isEmpty()) {
      return Sentences.text(Saying.of("device-unnamed", ""));
    }
    return Sentences.text(
        Saying.of("device-named", "", Arg.of(browser.get()), Arg.of(system.get())));
  }

  private static Optional<String> first(Map<String, String> names, String agent) {
    return names.entrySet().stream()
        .filter(name -> agent.contains(name.getKey()))
        .map(Map.Entry::getValue)
        .findFirst();
  }
}
