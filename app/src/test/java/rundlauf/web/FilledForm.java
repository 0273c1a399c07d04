package rundlauf.web;

import java.util.LinkedHashMap;
import java.util.Map;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** A form of a page, filled in with the keyboard and read back. */
final class FilledForm {
  private final Device device;
  private final String fields;

  /**
   * Of a page.
   *
   * @param form a selector
   */
  FilledForm(Device device, String form) {
    this.device = device;
    this.fields = "F .field input, F .field select, F .field textarea".replace("F", form);
  }

  static String value(WebElement field) {
    return String.valueOf(field.getDomProperty("value"));
  }

  /** Types every field that is named, from the first to the last, and passes over the others. */
  void fill(Map<String, String> typed) {
    device.ask("document.querySelector(arguments[0]).focus(); return 1", fields);
    int count = device.all(fields).size();
    for (int i = 0; i < count; i++) {
      WebElement here = device.find(":focus");
      String text = typed.getOrDefault(String.valueOf(here.getDomAttribute("name")), "");
      if (here.getTagName().equals("select")) {
        choose(here, text);
      } else {
        device.type(text);
      }
      device.type(Keys.TAB);
    }
  }

  private void choose(WebElement select, String text) {
    device.type(Keys.HOME);
    for (int i = 0; i < 60 && !value(select).equals(text); i++) {
      device.type(Keys.ARROW_DOWN);
    }
  }

  /** What stands in its fields, by their names; empty ones are left out. */
  Map<String, String> kept() {
    Map<String, String> kept = new LinkedHashMap<>();
    for (WebElement field : device.all(fields)) {
      if (!value(field).isEmpty()) {
        kept.put(field.getDomAttribute("name"), value(field));
      }
    }
    return kept;
  }
}
