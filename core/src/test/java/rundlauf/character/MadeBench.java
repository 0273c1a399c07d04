package rundlauf.character;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import rundlauf.bench.Bench;
import rundlauf.bench.Cutter;
import rundlauf.bench.Holder;
import rundlauf.bench.Setup;
import rundlauf.bench.Span;
import rundlauf.bench.Spindle;
import rundlauf.maths.Draws;
import rundlauf.maths.Work;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Unit;
import rundlauf.readings.LoadReadings;
import rundlauf.readings.RunoutReadings;
import rundlauf.readings.TrialHead;
import rundlauf.reduce.Reduced;
import rundlauf.reduce.runout.Runout;
import rundlauf.reduce.runout.RunoutReduction;
import rundlauf.reduce.sideload.SideLoad;
import rundlauf.reduce.sideload.SideLoadReduction;
import rundlauf.simulated.TakenLoad;
import rundlauf.simulated.TakenRunout;

/** An invented bench of one spindle with two collets and a chuck, and another spindle. */
final class MadeBench {
  static final Quantity TO_MOUNT = Quantity.exact(0.040, Unit.MILLIMETRE);
  static final double TIP = 28e-3;
  private static final double ANGLE_LIMIT = Math.toRadians(3);

  private MadeBench() {}

  static Spindle heron() {
    return spindle("Heron", Optional.of("induction"), Optional.of(0.75), Optional.of(TO_MOUNT));
  }

  static Spindle spindle(
      String name, Optional<String> drive, Optional<Double> efficiency, Optional<Quantity> nose) {
    return new Spindle(
        name,
        drive,
        Optional.empty(),
        Optional.of(Quantity.exact(800, Unit.WATT)),
        efficiency.map(e -> Quantity.exact(e, Unit.ONE)),
        Optional.empty(),
        Optional.empty(),
        Optional.of(new Span(Quantity.exact(100, Unit.RPM), Quantity.exact(400, Unit.RPM))),
        Optional.of(new Spindle.Nose(nose, Optional.empty())),
        Optional.empty(),
        Optional.empty());
  }

  static Bench bench(Spindle... spindles) {
    return new Bench(
        "bench.yaml",
        "invented",
        Optional.empty(),
        List.of(spindles),
        List.of(holder("3 mm", "collet"), holder("1/8 in", "collet"), holder("jaws", "chuck")),
        List.of(cutter()),
        List.of(),
        List.of(),
        List.of(),
        List.of(
            setup("Heron 3 mm", "Heron", "3 mm"),
            setup("Heron 1/8 in", "Heron", "1/8 in"),
            setup("Heron chuck", "Heron", "jaws"),
            setup("Wren 3 mm", "Wren", "3 mm")),
        List.of(),
        Optional.empty(),
        List.of());
  }

  static Cutter cutter() {
    return new Cutter(
        "two-flute",
        Optional.empty(),
        Optional.empty(),
        OptionalInt.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.of(Quantity.exact(3e-3, Unit.MILLIMETRE)),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  private static Holder holder(String name, String kind) {
    return new Holder(
        name,
        Optional.of(kind),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  private static Setup setup(String name, String spindle, String holder) {
    return new Setup(
        name,
        spindle,
        Optional.of(holder),
        Optional.of("two-flute"),
        Optional.empty(),
        Optional.empty());
  }

  static TrialHead head(String file, String kind, String date, String setup) {
    return new TrialHead(
        file, kind, Optional.empty(), Optional.of(date), Optional.of(setup), Map.of());
  }

  static Runout runout(TakenRunout taken, String file, String date, String setup) {
    RunoutReadings r = taken.readings(file, OptionalDouble.of(TIP), ANGLE_LIMIT);
    var readings =
        new RunoutReadings(
            head(file, "runout", date, setup),
            r.indicator(),
            r.gaugeDiameter(),
            r.tip(),
            r.angleLimit(),
            r.sweeps());
    return RunoutReduction.reduce(readings, Draws.DEFAULT, Work.sequential());
  }

  static SideLoad load(TakenLoad taken, String file, String date, String setup, String reference) {
    LoadReadings r = taken.readings(file);
    var readings =
        new LoadReadings(
            head(file, "side-load", date, setup),
            r.indicator(),
            r.forceScale(),
            r.contact(),
            r.body(),
            Optional.of(reference),
            r.reaction(),
            r.points());
    return SideLoadReduction.reduce(readings, Draws.DEFAULT, Work.sequential());
  }

  static Quantity mm(double value) {
    return Quantity.exact(value * 1e-3, Unit.MILLIMETRE);
  }

  /** What a setup of Heron is by these results. */
  static SetupCharacter heron(String setup, double stickoutMm, List<Reduced> results) {
    Bench bench = bench(heron());
    return MeasuredCharacter.of(
        bench, bench.setup(setup).orElseThrow(), results, mm(stickoutMm), Draws.DEFAULT);
  }
}
