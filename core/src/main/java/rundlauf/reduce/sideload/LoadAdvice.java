package rundlauf.reduce.sideload;

import java.util.ArrayList;
import java.util.List;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Saying;
import rundlauf.readings.LoadReadings;

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
    if (fit.scatterAssumed()) {
      advice.add(Saying.of("side-load-scatter-assumed", "stiffness"));
    }
    if (readings.forceScale().u() == 0) {
      advice.add(Saying.of("side-load-force-exact", "stiffness"));
    }
    if (readings.indicator().limitOfError().isEmpty()) {
      advice.add(Saying.of("side-load-dial-limit-unknown", "stiffness"));
    }
    if (readings.reference().isEmpty()) {
      advice.add(Saying.of("side-load-no-reference", "stiffness"));
    }
    return advice;
  }
}
