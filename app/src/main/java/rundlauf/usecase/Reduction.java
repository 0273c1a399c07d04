package rundlauf.usecase;

import java.util.Optional;
import java.util.OptionalDouble;
import rundlauf.bench.Bench;
import rundlauf.bench.Trial;
import rundlauf.maths.Draws;
import rundlauf.maths.Work;
import rundlauf.readings.AxialReader;
import rundlauf.readings.GrowthReader;
import rundlauf.readings.InspectionReader;
import rundlauf.readings.LoadReader;
import rundlauf.readings.LoadReadings;
import rundlauf.readings.RunoutReader;
import rundlauf.readings.SpeedReader;
import rundlauf.readings.TrialKind;
import rundlauf.reduce.Reduced;
import rundlauf.reduce.axial.AxialReduction;
import rundlauf.reduce.growth.GrowthReduction;
import rundlauf.reduce.runout.Runout;
import rundlauf.reduce.runout.RunoutReduction;
import rundlauf.reduce.sideload.SideLoadReduction;
import rundlauf.reduce.speed.Speed;
import rundlauf.reduce.speed.SpeedReduction;
import rundlauf.safety.InspectionReduction;
import rundlauf.safety.SetupCautions;
import rundlauf.safety.norm.Norms;

/** A trial as typed, understood and reduced by its kind, with the cautions of its setup. */
final class Reduction {
  private Reduction() {}

  static Reduced of(Trial trial, Optional<Bench> bench, Draws draws, Work work) {
    return switch (TrialKind.of(trial)) {
      case RUNOUT -> {
        var readings = RunoutReader.read(trial, bench);
        Runout runout = RunoutReduction.reduce(readings, draws, work);
        yield cautioned(
            judged(runout, bench, readings.gaugeDiameter()), bench, readings.gaugeDiameter());
      }
      case SIDE_LOAD -> {
        var readings = LoadReader.read(trial, bench);
        yield cautioned(SideLoadReduction.reduce(readings, draws, work), bench, pin(readings));
      }
      case AXIAL -> {
        var readings = AxialReader.read(trial, bench);
        yield cautioned(AxialReduction.reduce(readings, draws, work), bench, pin(readings));
      }
      case GROWTH -> {
        var readings = GrowthReader.read(trial, bench);
        var none = OptionalDouble.empty();
        yield cautioned(GrowthReduction.reduce(readings, draws, work), bench, none);
      }
      case SPEED -> {
        var readings = SpeedReader.read(trial, bench);
        yield cautioned(SpeedReduction.reduce(readings, draws), bench, OptionalDouble.empty());
      }
      case INSPECTION -> {
        var readings = InspectionReader.read(trial, bench);
        yield cautioned(InspectionReduction.reduce(readings), bench, OptionalDouble.empty());
      }
    };
  }

  /** Reads a trial and reduces nothing: refuses what cannot be read. */
  static void read(Trial trial, Optional<Bench> bench) {
    switch (TrialKind.of(trial)) {
      case RUNOUT -> RunoutReader.read(trial, bench);
      case SIDE_LOAD -> LoadReader.read(trial, bench);
      case AXIAL -> AxialReader.read(trial, bench);
      case GROWTH -> GrowthReader.read(trial, bench);
      case SPEED -> SpeedReader.read(trial, bench);
      case INSPECTION -> InspectionReader.read(trial, bench);
    }
  }

  /** With what the norms say to it, where its setup is known. */
  private static Runout judged(Runout runout, Optional<Bench> bench, OptionalDouble pin) {
    return bench
        .flatMap(b -> runout.head().setup().flatMap(b::setup))
        .map(setup -> Norms.judged(bench.orElseThrow(), setup, runout, pin))
        .orElse(runout);
  }

  private static OptionalDouble pin(LoadReadings readings) {
    return readings.body().isPresent()
        ? OptionalDouble.of(readings.body().get().diameter().si())
        : OptionalDouble.empty();
  }

  private static Reduced cautioned(Reduced result, Optional<Bench> bench, OptionalDouble pin) {
    var setup = bench.flatMap(b -> result.head().setup().flatMap(b::setup));
    if (setup.isEmpty()) {
      return result;
    }
    return result.withCautions(
        SetupCautions.of(bench.orElseThrow(), setup.get(), pin, top(result)));
  }

  private static OptionalDouble top(Reduced result) {
    return result instanceof Speed speed && speed.usableMax().known()
        ? OptionalDouble.of(speed.usableMax().value())
        : OptionalDouble.empty();
  }
}
