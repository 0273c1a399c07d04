package rundlauf.reduce.push;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Saying;
import rundlauf.readings.LoadReadings;

/**
 * What is said of fitted lines, whichever way the nose was pushed.
 *
 * @param stiffness path of the figure that they are about
 * @param play path of the figure of the gap
 */
public record LineSayings(String stiffness, String play) {
  /** Below this tail probability a bend of the line is said; our choice. */
  private static final double BENT = 0.01;

  /** With so many readings over, Student's t is 4.3 or more where a normal number is 1.96. */
  private static final int FEW = 2;

  /** What must be looked at. */
  public List<Saying> cautions(
      LoadLines lines, LoadFigures figures, Optional<Straightness> straightness) {
    List<Saying> cautions = new ArrayList<>();
    if (lines.secant()) {
      cautions.add(Saying.of("side-load-secant", stiffness));
    }
    if (figures.playIsLowerBound()) {
      cautions.add(Saying.of("side-load-play-lower-bound", play));
    }
    straightness
        .filter(s -> s.p() < BENT)
        .ifPresent(
            s ->
                cautions.add(
                    Saying.of(
                        "side-load-bent", "straightness", Arg.number(s.f()), Arg.number(s.p()))));
    return cautions;
  }

  /** What would make the figures better, and what was taken for granted. */
  public List<Saying> advice(LoadReadings readings, LoadLines lines, LoadFit fit) {
    List<Saying> advice = new ArrayList<>();
    if (fit.scatterAssumed()) {
      advice.add(Saying.of("side-load-scatter-assumed", stiffness));
    }
    int spare = lines.rows().size() - lines.design()[0].length;
    if (spare > 0 && spare <= FEW) {
      advice.add(Saying.of("side-load-few-readings", stiffness, Arg.of(spare)));
    }
    if (readings.forceScale().u() == 0) {
      advice.add(Saying.of("side-load-force-exact", stiffness));
    }
    if (readings.indicator().limitOfError().isEmpty()) {
      advice.add(Saying.of("side-load-dial-limit-unknown", stiffness));
    }
    if (readings.stand().isEmpty()) {
      advice.add(stand(readings));
    }
    readings.indicator().fromNorm().ifPresent(advice::add);
    if (readings.reference().isEmpty()) {
      advice.add(Saying.of("side-load-no-reference", stiffness));
    }
    return advice;
  }

  /** Pushed off from what the dial's foot stands on, the stand is loaded by the push itself. */
  private Saying stand(LoadReadings readings) {
    return readings
        .reaction()
        .filter(body -> readings.reference().filter(body::equals).isPresent())
        .map(body -> Saying.of("stand-pushed-unchecked", stiffness, Arg.term("reference-" + body)))
        .orElseGet(() -> Saying.of("stand-not-checked", stiffness));
  }
}
