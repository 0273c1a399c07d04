package rundlauf.web;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/** A sheet that a device has open. */
final class OpenSheet {
  private final Device device;

  private OpenSheet(Device device) {
    this.device = device;
  }

  /** Begins a trial of a setup of the demo bench, and opens its sheet. */
  static OpenSheet begin(
      OpenWorkbook workbook, String kind, String setup, Map<String, String> fields) {
    Device device = workbook.device();
    String named = URLEncoder.encode(setup, StandardCharsets.UTF_8);
    workbook.go("/bench/1/trial/new/" + kind + "?setup=" + named);
    return begin(device, fields);
  }

  /** Fills in the form that begins a trial, and opens the trial's sheet. */
  static OpenSheet begin(Device device, Map<String, String> fields) {
    fields.forEach(device::fill);
    device.press("form.start button");
    device.await("the sheet", () -> device.address().endsWith("/sheet"));
    return on(device);
  }

  /** The sheet that is open already. */
  static OpenSheet on(Device device) {
    OpenSheet sheet = new OpenSheet(device);
    device.await("the first step", () -> !device.text("#prompt").isEmpty());
    return sheet;
  }

  String prompt() {
    return device.text("#prompt");
  }

  /** How many readings the page says are done. */
  int done() {
    String count = device.text("#count");
    int first = Integer.parseInt(count.replaceAll("^\\D*(\\d+).*", "$1"));
    return count.startsWith("Reading ") ? first - 1 : first;
  }

  /** Types a reading and goes on, once the page asks for the next one. */
  void read(String text) {
    int before = done();
    device.enter(text);
    device.await("the step after " + before, () -> done() == before + 1);
  }

  /** Waits until the bench has everything and the page shows it. */
  void settled(int readings) {
    device.await("all readings", () -> kept() == readings && device.text("#waiting").isEmpty());
  }

  /** Readings that the page shows as kept. */
  int kept() {
    return device.all("#kept .rows li").size();
  }

  /** Whether the page says that the bench is not reached. */
  boolean away() {
    return device.find("#banner").isDisplayed();
  }

  /** The address of the trial. */
  String trial() {
    return device.address().replaceFirst("/sheet$", "");
  }
}
