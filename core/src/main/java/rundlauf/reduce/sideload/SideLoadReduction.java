package rundlauf.reduce.sideload;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rundlauf.maths.Draws;
import rundlauf.maths.Work;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Drawn;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Measured;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.readings.LoadReadings;
import rundlauf.readings.LoadReadings.Point;
import rundlauf.reduce.push.Inverse;
import rundlauf.reduce.push.LackOfFit;
import rundlauf.reduce.push.Line;
import rundlauf.reduce.push.LineSayings;
import rundlauf.reduce.push.LoadFigures;
import rundlauf.reduce.push.LoadFit;
import rundlauf.reduce.push.LoadLines;
import rundlauf.reduce.push.Straightness;

/** Side-load readings in, stiffness, play and hysteresis out. */
public final class SideLoadReduction {
  static final LineSayings SAYINGS = new LineSayings("stiffness", "play");

  private SideLoadReduction() {}

  /**
   * How far the nose gives way to a push.
   *
   * @param readings loads [N], readings of the dial [m]; at least two loads on one side, or one
   *     load and an unloaded reading
   * @param draws count and seed
   * @param work asked now and then whether to go on
   * @return compliance [m/N], stiffness [N/m], play and hysteresis [m] by draws: the posterior of
   *     readings rounded to the dial's step, joined by the force's scale and the dial's limits,
   *     which all readings share; the shank's own compliance to first order
   * @throws Refused {@code side-load-no-load} or {@code side-load-one-load} when the readings
   *     cannot bear a slope
   * @see "docs/methods/side-load.md"
   */
  public static SideLoad reduce(LoadReadings readings, Draws draws, Work work) {
    LoadLines lines = LoadLines.usable(readings);
    work.check();
    double step = readings.indicator().readTo();
    LoadFit fit = LoadFit.of(lines, readings.head().name(), step, draws);
    var figures = new LoadFigures(readings, lines, fit, draws);
    Drawn compliance = figures.compliance();
    Figure shank = shank(readings, lines);
    Optional<Straightness> straightness = LackOfFit.of(lines, step);
    Compliances compliances = compliances(readings, lines, compliance, shank, draws);
    List<Saying> advice = new ArrayList<>(compliances.shares().advice());
    advice.addAll(LoadAdvice.of(readings, lines, fit));
    return new SideLoad(
        readings.head(),
        readings,
        Inverse.of(compliance, "side-load-too-stiff", "stiffness", draws),
        Inverse.notNegative(compliance, draws),
        figures.play(),
        figures.loop(),
        straightness,
        shank,
        setup(compliance, shank, lines, draws),
        Line.of(lines, fit),
        compliances,
        SAYINGS.cautions(lines, figures, straightness),
        advice);
  }

  private static Compliances compliances(
      LoadReadings readings, LoadLines lines, Drawn compliance, Figure shank, Draws draws) {
    List<Slope> slopes = Slopes.of(readings, draws);
    List<Compliances.Axis> axes = Directions.of(slopes, draws);
    ReachReduction reach = reach(readings, lines, slopes, compliance, shank, draws);
    return new Compliances(
        axes.get(0),
        axes.get(1),
        reach.distances(),
        reach.noses(),
        SharesReduction.of(readings, slopes, draws),
        reach.sayings(),
        axes.get(0).angle().known() ? Directions.pushes(slopes) : List.of());
  }

  private static ReachReduction reach(
      LoadReadings readings,
      LoadLines lines,
      List<Slope> slopes,
      Drawn compliance,
      Figure shank,
      Draws draws) {
    Point first = lines.loaded().get(0);
    Optional<Saying> why = Reaching.why(readings, shank, first.place().equals("shank"));
    Optional<Reaching> assumed =
        why.isPresent()
            ? Optional.empty()
            : Optional.of(reaching(readings, first, compliance, shank, draws));
    return ReachReduction.of(readings, slopes, assumed, why, draws);
  }

  private static Reaching reaching(
      LoadReadings readings, Point first, Drawn compliance, Figure shank, Draws draws) {
    Quantity contact = readings.contact().orElseThrow();
    Drawn behind =
        first.place().equals("shank")
            ? Drawn.through(v -> v[0] - v[1], Unit.MICROMETRE_PER_NEWTON, draws, compliance, shank)
            : compliance;
    return new Reaching(
        readings,
        readings.nose().orElseThrow(),
        contact,
        first.at().orElse(contact.si()),
        behind,
        draws);
  }

  private static Figure shank(LoadReadings readings, LoadLines lines) {
    Point first = lines.loaded().get(0);
    Unit unit = Unit.MICROMETRE_PER_NEWTON;
    if (!first.place().equals("shank")) {
      Arg place = Arg.of(first.place());
      return new Missing(unit, Saying.of("side-load-not-on-shank", "shank.compliance", place));
    }
    if (readings.body().isEmpty() || readings.contact().isEmpty()) {
      String why = readings.body().isEmpty() ? "side-load-no-body" : "side-load-no-contact";
      return new Missing(unit, Saying.of(why, "shank.compliance"));
    }
    Quantity contact = readings.contact().get();
    double at = first.at().orElse(contact.si());
    return ShankBending.of(readings.body().get(), contact, at, readings.head().name());
  }

  /** Without the shank's bending; where the shank was not touched, it was never in. */
  private static Figure setup(Drawn compliance, Figure shank, LoadLines lines, Draws draws) {
    String code = "side-load-shank-takes-all";
    if (!lines.loaded().get(0).place().equals("shank")) {
      return Inverse.of(compliance, "side-load-too-stiff", "setupStiffness", draws);
    }
    if (shank instanceof Measured known) {
      Drawn rest =
          Drawn.through(v -> v[0] - v[1], Unit.MICROMETRE_PER_NEWTON, draws, compliance, known);
      return Inverse.of(rest, code, "setupStiffness", draws);
    }
    Saying why = ((Missing) shank).why();
    return new Missing(
        Unit.NEWTON_PER_MICROMETRE, new Saying(why.code(), "setupStiffness", why.args()));
  }
}
