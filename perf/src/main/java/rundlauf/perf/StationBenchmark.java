package rundlauf.perf;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import rundlauf.maths.Draws;
import rundlauf.maths.Samples;
import rundlauf.maths.Work;
import rundlauf.readings.IndicatorLimits;
import rundlauf.readings.RunoutReadings;
import rundlauf.readings.TrialHead;
import rundlauf.reduce.runout.Runout;
import rundlauf.reduce.runout.RunoutReduction;

/**
 * A whole runout trial of one station read on a 0.01 mm dial: 30 µm off, to the nearest division.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class StationBenchmark {
  private static final double DIVISION = 10e-6;

  @Param({"4", "8", "16", "24"})
  public int positions;

  private RunoutReadings trial = readings(8);

  @Setup
  public void take() {
    trial = readings(positions);
  }

  @Benchmark
  public Runout reduce() {
    return RunoutReduction.reduce(trial, Draws.DEFAULT, Work.sequential());
  }

  private static RunoutReadings readings(int positions) {
    Samples angles = Samples.generate(positions, i -> 2 * Math.PI * i / positions);
    Samples read = angles.map(a -> DIVISION * Math.rint(3 * Math.cos(a - 0.7) + 0.2));
    var none = OptionalDouble.empty();
    var dial =
        new IndicatorLimits(
            "dial", DIVISION, DIVISION, Optional.empty(), none, none, none, Optional.empty());
    var head =
        new TrialHead(
            "benchmark", "runout", Optional.empty(), Optional.empty(), Optional.empty(), Map.of());
    var sweep =
        new RunoutReadings.Sweep(OptionalDouble.of(5e-3), 1, none, none, angles, read, none, 1);
    return new RunoutReadings(
        head, dial, none, Optional.empty(), Math.toRadians(3), List.of(sweep));
  }
}
