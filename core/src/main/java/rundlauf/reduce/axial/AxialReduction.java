package rundlauf.reduce.axial;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rundlauf.maths.Draws;
import rundlauf.maths.Work;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Drawn;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;
import rundlauf.quantity.Saying;
import rundlauf.readings.LoadReadings;
import rundlauf.reduce.push.Inverse;
import rundlauf.reduce.push.LackOfFit;
import rundlauf.reduce.push.Line;
import rundlauf.reduce.push.LineSayings;
import rundlauf.reduce.push.LoadFigures;
import rundlauf.reduce.push.LoadFit;
import rundlauf.reduce.push.LoadLines;
import rundlauf.reduce.push.Straightness;

/** Readings of pushes and pulls along the spindle's axis in, end play and stiffness out. */
public final class AxialReduction {
  private static final LineSayings SAYINGS = new LineSayings("axialStiffness", "endPlay");

  private AxialReduction() {}

  /**
   * How far the nose gives way along its axis.
   *
   * @param readings loads [N], readings of the dial [m], directions 0 for a push toward the housing
   *     and half a turn for a pull; at least two loads one way, or one load and an unloaded reading
   * @param draws count and seed
   * @param work asked now and then whether to go on
   * @return end play [m], stiffness [N/m], compliance [m/N] and hysteresis [m] by draws: the
   *     posterior of readings rounded to the dial's step, joined by the force's scale and the
   *     dial's limits, which all readings share
   * @throws Refused {@code side-load-no-load} or {@code side-load-one-load} when the readings
   *     cannot bear a slope, {@code axial-dial-backward} when they run against the load beyond
   *     doubt
   * @see "docs/methods/axial.md"
   */
  public static Axial reduce(LoadReadings readings, Draws draws, Work work) {
    LoadLines lines = LoadLines.usable(readings);
    work.check();
    double step = readings.indicator().readTo();
    LoadFit fit = LoadFit.of(lines, readings.head().name(), step, draws);
    var figures = new LoadFigures(readings, lines, fit, draws);
    Drawn compliance = figures.compliance();
    refuseBackward(readings, compliance);
    Optional<Straightness> straightness = LackOfFit.of(lines, step);
    return new Axial(
        readings.head(),
        readings,
        ofEndPlay(figures.play()),
        Inverse.of(compliance, "side-load-too-stiff", "axialStiffness", draws),
        Inverse.notNegative(compliance, draws),
        figures.loop(),
        straightness,
        Line.of(lines, fit),
        SAYINGS.cautions(lines, figures, straightness),
        advice(readings, lines, fit));
  }

  /** A dial under the nose falls as the nose is pushed up: it must be said that it reads so. */
  private static void refuseBackward(LoadReadings readings, Drawn compliance) {
    if (compliance.estimate().orElseThrow().interval().high() < 0) {
      Place file = new Place(readings.head().file(), 0, 0, "readings");
      throw Refused.at(file, "axial-dial-backward");
    }
  }

  private static Figure ofEndPlay(Figure play) {
    return play instanceof Missing missing
        ? new Missing(
            missing.unit(), new Saying(missing.why().code(), "endPlay", missing.why().args()))
        : play;
  }

  private static List<Saying> advice(LoadReadings readings, LoadLines lines, LoadFit fit) {
    List<Saying> advice = new ArrayList<>();
    if (lines.otherPlaces() > 0) {
      String place = lines.loaded().get(0).place();
      advice.add(
          Saying.of(
              "side-load-other-places",
              "axialStiffness",
              Arg.of(lines.otherPlaces()),
              Arg.of(place)));
    }
    if (readings.contact().isPresent() || readings.body().isPresent()) {
      advice.add(Saying.of("axial-shank-not-parted", "axialStiffness"));
    }
    advice.addAll(SAYINGS.advice(readings, lines, fit));
    return advice;
  }
}
