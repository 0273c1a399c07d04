package rundlauf;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rundlauf.maths.Samples;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Cause;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Measured;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.readings.IndicatorLimits;
import rundlauf.readings.InspectionReadings;
import rundlauf.readings.InspectionReadings.State;
import rundlauf.readings.LoadReadings;
import rundlauf.readings.RunoutReadings.Sweep;
import rundlauf.readings.SpeedReadings;
import rundlauf.readings.TrialHead;
import rundlauf.reduce.push.Straightness;
import rundlauf.reduce.runout.BestClocking;
import rundlauf.reduce.runout.Runout;
import rundlauf.reduce.sideload.SideLoad;
import rundlauf.reduce.speed.Speed;
import rundlauf.safety.Inspection;

/** Results written by hand for the tests of what is made of them; every number is invented. */
public final class Invented {
  private static final Cause DIAL = Cause.rectangular("indicator/plunger dial", "limit-of-error");
  private static final Cause SCATTER = Cause.scatter("trials/heron.yaml", "scatter", 5);
  private static final Saying ONE_STATION = Saying.of("one-station-only", "axis");

  private Invented() {}

  /** A sentence that shows which saying it was asked for. */
  public static String spelled(Saying saying) {
    StringBuilder text = new StringBuilder("<" + saying.code());
    saying
        .args()
        .forEach(arg -> text.append(' ').append(arg instanceof Arg.Word w ? w.text() : arg));
    return text.append('>').toString();
  }

  public static TrialHead head(String kind) {
    return new TrialHead(
        "trials/heron.yaml",
        kind,
        Optional.of("Heron, invented"),
        Optional.of("2026-03-02"),
        Optional.empty(),
        new LinkedHashMap<>());
  }

  public static Measured length(double um, double dialUm, double scatterUm) {
    return Measured.exact(um * 1e-6, Unit.MICROMETRE)
        .with(DIAL, dialUm * 1e-6)
        .with(SCATTER, scatterUm * 1e-6);
  }

  /** One sweep of eight readings at 5 mm, so no axis. */
  public static Runout runout() {
    var sweep =
        new Sweep(
            OptionalDouble.of(0.005),
            1,
            OptionalDouble.empty(),
            OptionalDouble.of(Math.PI / 2),
            Samples.generate(8, i -> i * Math.PI / 4),
            Samples.of(10e-6, 30e-6, 40e-6, 30e-6, 10e-6, -10e-6, -20e-6, -10e-6),
            OptionalDouble.empty(),
            5);
    var highSpot = Measured.exact(Math.toRadians(-5), Unit.DEGREE).with(SCATTER, Math.toRadians(4));
    var station =
        new Runout.Station(
            sweep,
            Measured.exact(60e-6, Unit.MICROMETRE),
            length(58, 4.6, 2.5),
            length(29, 2.3, 1.5),
            highSpot,
            List.of(
                new Runout.Harmonic(2, length(3, 0, 1), missing(Unit.DEGREE, "lost-in-scatter"))),
            length(2.4, 0, 0.6),
            Samples.of(10e-6, 0, 29e-6),
            List.of(1),
            Optional.empty());
    Figure none = new Missing(Unit.MICROMETRE, ONE_STATION);
    var axis =
        new Runout.Axis(
            new Missing(Unit.MICROMETRE_PER_MILLIMETRE, ONE_STATION),
            new Missing(Unit.DEGREE, ONE_STATION),
            new Runout.Tip(
                OptionalDouble.of(0.028), none, none, new Missing(Unit.DEGREE, ONE_STATION)));
    return new Runout(
        head("runout"),
        List.of(station),
        axis,
        missing(Unit.MICROMETRE, "one-clamping-only"),
        new Runout.NextClamping(OptionalDouble.of(0.005), length(29, 2.3, 6), length(58, 4.6, 12)),
        List.of(),
        List.of(Saying.of("one-station-only", "axis")));
  }

  /** The same with a collet that was turned, and the rest that was not. */
  public static Runout clocked() {
    Runout plain = runout();
    OptionalDouble station = OptionalDouble.of(0.005);
    return new Runout(
        plain.head(),
        plain.stations(),
        plain.axis(),
        plain.clampingScatter(),
        plain.nextClamping(),
        List.of(
            new Runout.Part(
                "spindle+shank", station, length(9, 1, 1), missing(Unit.DEGREE, "direction-lost")),
            new Runout.Part(
                "collet", station, length(20, 1, 1), plain.stations().get(0).highSpot())),
        new BestClocking(
            station,
            OptionalDouble.of(Math.toRadians(130)),
            OptionalDouble.empty(),
            length(22, 1, 3),
            length(58, 1, 3)),
        plain.cautions(),
        plain.advice());
  }

  public static Missing missing(Unit unit, String code) {
    return new Missing(unit, Saying.of(code, ""));
  }

  public static SideLoad sideLoad() {
    var indicator =
        new IndicatorLimits(
            "indicator/plunger dial",
            1e-5,
            1e-5,
            Optional.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            Optional.empty());
    var readings =
        new LoadReadings(
            head("side-load"),
            indicator,
            Measured.exact(1, Unit.ONE),
            Optional.empty(),
            Optional.empty(),
            Optional.of("carriage"),
            Optional.of("table"),
            List.of());
    var stiffness = Measured.exact(0.31e6, Unit.NEWTON_PER_MICROMETRE).with(SCATTER, 0.02e6);
    var compliance = Measured.exact(1 / 0.31e6, Unit.MICROMETRE_PER_NEWTON).with(SCATTER, -0.2e-6);
    return new SideLoad(
        head("side-load"),
        readings,
        stiffness,
        compliance,
        length(12, 1, 2),
        missing(Unit.MICROMETRE, "one-branch-only"),
        Optional.of(new Straightness(1.7, 0.24)),
        missing(Unit.MICROMETRE_PER_NEWTON, "no-body"),
        missing(Unit.NEWTON_PER_MICROMETRE, "no-body"),
        List.of(),
        List.of(Saying.of("play-felt", "play", Arg.of(12e-6, Unit.MICROMETRE))),
        List.of());
  }

  public static Speed speed() {
    var readings = new SpeedReadings(head("speed"), "%", Samples.of(200), List.of());
    var slow = Measured.exact(100, Unit.RPM).with(SCATTER, 0.5);
    var fast = Measured.exact(400, Unit.RPM).with(SCATTER, 2);
    return new Speed(
        head("speed"),
        readings,
        List.of(new Speed.CurvePoint(10, slow), new Speed.CurvePoint(100, fast)),
        slow,
        fast,
        List.of(new Speed.SettingFor(200, Measured.exact(0.4, Unit.PERCENT).with(SCATTER, 0.01))),
        missing(Unit.RPM_PER_WATT, "no-power"),
        missing(Unit.PERCENT, "no-dead-band"),
        missing(Unit.PERCENT, "no-saturation"),
        List.of(),
        List.of());
  }

  public static Inspection inspection() {
    var item =
        new InspectionReadings.Item(
            "earth-bond",
            State.FAULT,
            Optional.of("4 ohm"),
            Optional.empty(),
            new rundlauf.quantity.Place("inspection.yaml", 7, 0, "items"));
    var readings = new InspectionReadings(head("inspection"), List.of(item));
    return new Inspection(
        head("inspection"),
        readings,
        true,
        List.of(Saying.of("item-fault", "earth-bond", Arg.of("earth-bond"))),
        List.of(),
        List.of());
  }
}
