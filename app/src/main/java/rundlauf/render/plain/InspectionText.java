package rundlauf.render.plain;

import rundlauf.readings.InspectionReadings.State;
import rundlauf.safety.Inspection;

/** What an inspection found: the hold and its reasons before everything else. */
final class InspectionText {
  private InspectionText() {}

  static void write(Sheet sheet, Inspection inspection) {
    if (inspection.hold()) {
      sheet.bullets("heading-hold", inspection.because());
    } else {
      sheet.heading("heading-no-hold");
    }
    sheet.heading("heading-counts");
    for (State state : State.values()) {
      long count = inspection.readings().items().stream().filter(i -> i.state() == state).count();
      sheet.row(sheet.word("state-" + state.name().toLowerCase(java.util.Locale.ROOT)), "" + count);
    }
  }
}
