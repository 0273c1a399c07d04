package rundlauf.reduce.sideload;

import java.util.ArrayList;
import java.util.List;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Saying;
import rundlauf.readings.LoadReadings;
import rundlauf.reduce.push.LoadFit;
import rundlauf.reduce.push.LoadLines;

/** What would make the figures of a side load better, and what was taken for granted. */
final class LoadAdvice {
  private LoadAdvice() {}

  static List<Saying> of(LoadReadings readings, LoadLines lines, LoadFit fit) {
    List<Saying> advice = new ArrayList<>();
    if (lines.otherPlaces() > 0) {
      advice.add(
          Saying.of(
              "side-load-other-places",
              "stiffness",
              Arg.of(lines.otherPlaces()),
              Arg.of(lines.loaded().get(0).place())));
    }
    if (lines.otherDirections() > 0) {
      advice.add(
          Saying.of("side-load-other-directions", "stiffness", Arg.of(lines.otherDirections())));
    }
    advice.addAll(SideLoadReduction.SAYINGS.advice(readings, lines, fit));
    return advice;
  }
}
