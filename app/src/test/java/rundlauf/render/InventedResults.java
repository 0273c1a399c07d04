package rundlauf.render;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rundlauf.maths.Samples;
import rundlauf.maths.Stream;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Cause;
import rundlauf.quantity.DrawnVector;
import rundlauf.quantity.Measured;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.readings.IndicatorLimits;
import rundlauf.readings.InspectionReadings;
import rundlauf.readings.InspectionReadings.State;
import rundlauf.readings.LoadReadings;
import rundlauf.readings.LoadReadings.Branch;
import rundlauf.readings.RunoutReadings.Sweep;
import rundlauf.readings.SpeedReadings;
import rundlauf.readings.TrialHead;
import rundlauf.reduce.push.Line;
import rundlauf.reduce.runout.BestClocking;
import rundlauf.reduce.runout.Form;
import rundlauf.reduce.runout.Runout;
import rundlauf.reduce.sideload.SideLoad;
import rundlauf.reduce.speed.Speed;
import rundlauf.safety.Inspection;

/** Results of trials, written by hand; every number is invented. */
final class InventedResults {
  private static final Cause DIAL =
      Cause.rectangular("indicator/plunger </script> dial", "limit-of-error");
  private static final Saying UNSAID = Saying.of("report-not-measured", "");
  private static final int DRAWS = 500;

  private InventedResults() {}

  static Measured length(String trial, double um, double dialUm, double scatterUm) {
    return Measured.exact(um * 1e-6, Unit.MICROMETRE)
        .with(DIAL, dialUm * 1e-6)
        .with(Cause.scatter(trial, "scatter-along", 5), scatterUm * 1e-6);
  }

  static Runout runout(TrialHead head, int clampings) {
    List<Runout.Station> stations = new ArrayList<>();
    for (int clamping = 1; clamping <= clampings; clamping++) {
      stations.add(station(head, 5, clamping, 22));
      stations.add(station(head, 20, clamping, 47));
    }
    Measured tip = length(head.file(), 97.4, 4.6, 2.5);
    Measured angle =
        Measured.exact(Math.toRadians(-12), Unit.DEGREE)
            .with(Cause.scatter(head.file(), "scatter-across", 5), Math.toRadians(4));
    var axis =
        new Runout.Axis(
            Measured.exact(0.0011, Unit.MICROMETRE_PER_MILLIMETRE).with(DIAL, 0.0001),
            angle,
            new Runout.Tip(OptionalDouble.of(0.028), tip, length("a", 48.7, 2.3, 1.3), angle));
    return new Runout(
        head,
        stations,
        axis,
        new Missing(Unit.MICROMETRE, UNSAID),
        new Runout.NextClamping(
            OptionalDouble.of(0.028), length("b", 48, 2, 6), length("b", 97, 5, 12)),
        clampings > 1 ? parts(head) : List.of(),
        clampings > 1 ? InventedDrawings.clocking() : noClocking(),
        List.of(),
        List.of(Saying.of("report-name", "", Arg.of("Take the tool out twice more."))));
  }

  private static List<Runout.Part> parts(TrialHead head) {
    Missing untold = new Missing(Unit.DEGREE, Saying.of("direction-lost", ""));
    return List.of(
        new Runout.Part("spindle", OptionalDouble.of(0.02), length(head.file(), 12, 3, 1), untold),
        new Runout.Part("collet", OptionalDouble.of(0.02), length(head.file(), 31, 3, 1), untold),
        new Runout.Part("shank", OptionalDouble.of(0.02), length(head.file(), 4, 1, 1), untold));
  }

  private static BestClocking noClocking() {
    Missing none = new Missing(Unit.MICROMETRE, Saying.of("parts-not-told-apart", ""));
    OptionalDouble no = OptionalDouble.empty();
    return new BestClocking(no, no, no, none, none);
  }

  private static Runout.Station station(TrialHead head, double atMm, int clamping, double um) {
    Stream stream = Stream.of(7, head.file() + atMm + clamping);
    Samples angles = Samples.generate(8, i -> i * Math.PI / 4);
    Samples noise = stream.gaussians(8);
    Samples readings =
        Samples.generate(
            8,
            i ->
                Math.rint((um * Math.cos(angles.get(i) - clamping) + 3 * noise.get(i)) / 10) * 1e-5
                    + 4e-5);
    double a = um * 1e-6 * Math.cos(clamping);
    double b = um * 1e-6 * Math.sin(clamping);
    var vector =
        new DrawnVector(
            stream.gaussians(DRAWS).map(x -> a + 2e-6 * x),
            stream.gaussians(DRAWS).map(x -> b + 2e-6 * x),
            new LinkedHashMap<>());
    return new Runout.Station(
        new Sweep(
            OptionalDouble.of(atMm / 1000),
            clamping,
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            angles,
            readings,
            OptionalDouble.empty(),
            5),
        Measured.exact(2 * um * 1e-6, Unit.MICROMETRE),
        length(head.file(), 2 * um, 4, 2),
        length(head.file(), um, 2, 1),
        Measured.exact(clamping, Unit.DEGREE).with(DIAL, 0.05),
        List.of(),
        length(head.file(), 3, 0, 0.8),
        Samples.of(4e-5, a, b, 2e-6, -1e-6),
        List.of(1, 2),
        Optional.of(vector),
        clamping > 1 ? InventedDrawings.form() : Form.missing(UNSAID));
  }

  static SideLoad sideLoad(TrialHead head) {
    List<LoadReadings.Point> points = new ArrayList<>();
    int line = 5;
    for (double way : new double[] {0, Math.PI}) {
      for (int k = 0; k <= 8; k++) {
        double load = 5.0 * (k <= 4 ? k : 8 - k);
        double um = 4 + 3.2 * load + (k > 4 ? 6 : 0);
        points.add(
            new LoadReadings.Point(
                load,
                Math.rint(Math.cos(way) * um / 10) * 1e-5,
                "shank",
                Optional.of(0.01),
                way,
                0,
                k <= 4 ? Branch.UP : Branch.DOWN,
                1,
                line++));
      }
    }
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
            head,
            indicator,
            Measured.exact(1, Unit.ONE),
            Optional.empty(),
            Optional.empty(),
            Optional.of("table"),
            Optional.of("table"),
            points);
    Cause arms = Cause.rectangular("rig/brass lever", "load-arm");
    var stiffness =
        Measured.exact(0.31e6, Unit.NEWTON_PER_MICROMETRE).with(arms, 4e3).with(DIAL, 11e3);
    return new SideLoad(
        head,
        readings,
        stiffness,
        Measured.exact(1 / 0.31e6, Unit.MICROMETRE_PER_NEWTON).with(arms, 4e-8),
        length(head.file(), 8, 1, 2),
        length(head.file(), 6, 1, 2),
        Optional.empty(),
        new Missing(Unit.MICROMETRE_PER_NEWTON, UNSAID),
        new Missing(Unit.NEWTON_PER_MICROMETRE, UNSAID),
        List.of(new Line(0, "shank", 4e-6, 3.2e-6), new Line(Math.PI, "shank", 4e-6, 3.2e-6)),
        InventedDrawings.compliances(),
        List.of(
            Saying.of("report-name", "", Arg.of("The nose moves 8 µm before it bears a load."))),
        List.of());
  }

  static Speed speed(TrialHead head) {
    List<SpeedReadings.Point> points = new ArrayList<>();
    List<Speed.CurvePoint> curve = new ArrayList<>();
    for (int k = 0; k <= 8; k++) {
      double setting = 10 + 11.25 * k;
      double turns = Math.min(400, 55 * k);
      points.add(new SpeedReadings.Point(setting, turns + (k % 3), OptionalDouble.empty(), 5 + k));
      curve.add(
          new Speed.CurvePoint(
              setting,
              Measured.exact(turns, Unit.RPM)
                  .with(Cause.scatter(head.file(), "scatter-along", 6), 6.0)));
    }
    return new Speed(
        head,
        new SpeedReadings(head, "%", Samples.of(200), points),
        curve,
        curve.get(1).speed(),
        curve.get(8).speed(),
        List.of(
            new Speed.SettingFor(200, Measured.exact(0.51, Unit.PERCENT).with(DIAL, 0.01)),
            new Speed.SettingFor(900, new Missing(Unit.PERCENT, UNSAID))),
        new Missing(Unit.RPM_PER_WATT, UNSAID),
        new Missing(Unit.PERCENT, UNSAID),
        Measured.exact(0.9, Unit.PERCENT).with(DIAL, 0.02),
        List.of(),
        List.of());
  }

  static Inspection inspection(TrialHead head, boolean fault) {
    var item =
        new InspectionReadings.Item(
            "earth-bond",
            fault ? State.FAULT : State.GOOD,
            Optional.of(fault ? "4 ohm" : "0.1 ohm"),
            Optional.of(InventedBench.HOSTILE),
            new rundlauf.quantity.Place("inspection.yaml", 7, 0, "items"));
    Saying why = Saying.of("report-name", "", Arg.of("The earth bond of the body is faulty."));
    return new Inspection(
        head,
        new InspectionReadings(head, List.of(item)),
        fault,
        fault ? List.of(why) : List.of(),
        List.of(),
        List.of());
  }
}
