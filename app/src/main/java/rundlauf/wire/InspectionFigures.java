package rundlauf.wire;

import java.util.List;
import rundlauf.quantity.Saying;
import rundlauf.safety.Inspection;

/** What an inspection gives: the hold, its reasons, and the items as they were found. */
final class InspectionFigures {
  private InspectionFigures() {}

  static List<Saying> write(JsonLine json, Inspection inspection) {
    json.truth("hold", inspection.hold());
    json.sayings("because", inspection.because());
    json.list(
        "items",
        inspection.readings().items(),
        item -> {
          json.text("item", item.item());
          json.text("state", item.state().word());
          json.text("value", item.value());
          json.text("note", item.note());
        });
    return List.of();
  }
}
