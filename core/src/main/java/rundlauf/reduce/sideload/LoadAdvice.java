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
  /** With so many readings over, Student's t is 4.3 or more where a normal number is 1.96. */
  private static final int FEW = 2;

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
    int spare = lines.rows().size() - lines.design()[0].length;
    if (spare > 0 && spare <= FEW) {
      advice.add(Saying.of("side-load-few-readings", "stiffness", Arg.of(spare)));
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
