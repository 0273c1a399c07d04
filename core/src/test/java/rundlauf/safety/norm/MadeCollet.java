package rundlauf.safety.norm;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import rundlauf.bench.Bench;
import rundlauf.bench.Cutter;
import rundlauf.bench.Holder;
import rundlauf.bench.Setup;
import rundlauf.bench.Span;
import rundlauf.bench.Spindle;
import rundlauf.maths.Draws;
import rundlauf.maths.Work;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.readings.RunoutReadings;
import rundlauf.readings.TrialHead;
import rundlauf.reduce.NormVerdict;
import rundlauf.reduce.runout.Runout;
import rundlauf.reduce.runout.RunoutReduction;
import rundlauf.simulated.Dial;
import rundlauf.simulated.Holding;
import rundlauf.simulated.Nuisances;
import rundlauf.simulated.Part;
import rundlauf.simulated.RunoutBench;
import rundlauf.simulated.RunoutPlan;

/** An invented collet of known truth, read on paper. */
final class MadeCollet {
  static final double UM = 1e-6;
  static final String HALF_TURNS = "0 0, 180 0, 0 180, 180 180";
  static final String TWICE = HALF_TURNS + ", " + HALF_TURNS;
  static final OptionalDouble PIN = OptionalDouble.of(3.175e-3);
  static final Setup SETUP =
      new Setup(
          "made",
          "Heron",
          Optional.of("made collet"),
          Optional.of("made cutter"),
          Optional.of(mm(18)),
          Optional.empty());

  private MadeCollet() {}

  static Quantity mm(double value) {
    return Quantity.exact(Unit.MILLIMETRE.toSi(value), Unit.MILLIMETRE);
  }

  static Holder collet(
      String kind, @Nullable String system, @Nullable Double bore, @Nullable String grade) {
    return new Holder(
        "made collet",
        Optional.of(kind),
        Optional.ofNullable(system),
        Optional.ofNullable(bore).map(MadeCollet::mm),
        Optional.empty(),
        Optional.empty(),
        Optional.ofNullable(grade),
        Optional.empty(),
        Optional.empty());
  }

  static Holder collet() {
    return collet("collet", "ER11", 3.175, null);
  }

  static Spindle spindle(Optional<Quantity> rotorMass) {
    var label =
        new Span(
            Quantity.exact(Unit.RPM.toSi(6000), Unit.RPM),
            Quantity.exact(Unit.RPM.toSi(24_000), Unit.RPM));
    return new Spindle(
        "Heron",
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.of(label),
        Optional.empty(),
        rotorMass,
        Optional.empty());
  }

  static Cutter cutter(Optional<Quantity> modulus) {
    return new Cutter(
        "made cutter",
        Optional.empty(),
        Optional.of(mm(3)),
        OptionalInt.of(2),
        Optional.empty(),
        Optional.of(mm(9)),
        Optional.empty(),
        Optional.of(mm(3.175)),
        modulus,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  static Bench bench(Spindle spindle, Holder holder, List<Cutter> cutters) {
    return new Bench(
        "bench.yaml",
        "invented",
        Optional.empty(),
        List.of(spindle),
        List.of(holder),
        cutters,
        List.of(),
        List.of(),
        List.of(),
        List.of(SETUP),
        List.of(),
        Optional.empty(),
        List.of());
  }

  /**
   * A trial reduced.
   *
   * @param um eccentricity of the collet
   * @param station [mm]
   * @param clocks collet and shank, a clamping at a time [deg]
   */
  static Runout runout(long seed, double um, double station, String clocks, Draws draws) {
    var truth =
        new Holding(
            Part.offset(9 * UM, Math.toRadians(70)),
            Part.offset(um * UM, Math.toRadians(40 * seed)),
            Part.offset(4 * UM, Math.toRadians(20)),
            List.of(),
            UM,
            0);
    var plan = RunoutPlan.oneTurn(station * 1e-3, 8).clamped(clampings(clocks));
    var dial = Dial.clean(2 * UM).with(Nuisances.clean().withScatter(0.5 * UM));
    RunoutReadings taken =
        RunoutBench.take(seed, truth, plan, dial)
            .readings("made-" + seed, OptionalDouble.empty(), Math.toRadians(3));
    return RunoutReduction.reduce(taken, draws, Work.sequential());
  }

  private static RunoutPlan.Clamping[] clampings(String clocks) {
    List<RunoutPlan.Clamping> all = new ArrayList<>();
    for (String pair : clocks.split(",")) {
      String[] angles = pair.strip().split(" ");
      all.add(
          new RunoutPlan.Clamping(
              Math.toRadians(Double.parseDouble(angles[0])),
              Math.toRadians(Double.parseDouble(angles[1]))));
    }
    return all.toArray(RunoutPlan.Clamping[]::new);
  }

  /** The same with what was said of the pin. */
  static Runout onPin(Runout runout, String pin) {
    return with(runout, Optional.empty(), Map.of("pin", pin));
  }

  /** The same with a date. */
  static Runout on(Runout runout, String date) {
    return with(runout, Optional.of(date), Map.of());
  }

  private static Runout with(Runout runout, Optional<String> date, Map<String, String> conditions) {
    String file = runout.head().file();
    var head = new TrialHead(file, "runout", Optional.empty(), date, Optional.empty(), conditions);
    return new Runout(
        head,
        runout.stations(),
        runout.axis(),
        runout.clampingScatter(),
        runout.nextClamping(),
        runout.parts(),
        runout.bestClocking(),
        runout.verdicts(),
        runout.cautions(),
        runout.advice());
  }

  static NormVerdict verdict(Holder holder, Runout runout, OptionalDouble pin) {
    return ColletRunout.of(holder, runout, pin).orElseThrow();
  }

  static List<String> codes(NormVerdict verdict) {
    return verdict.said().stream().map(Saying::code).toList();
  }
}
