package rundlauf.perf;

import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import rundlauf.bench.Cut;
import rundlauf.cutting.CutterInUse;
import rundlauf.cutting.Materials;
import rundlauf.cutting.Operation;
import rundlauf.cutting.prediction.Allowed;
import rundlauf.cutting.prediction.CutAsked;
import rundlauf.cutting.prediction.CutTask;
import rundlauf.cutting.prediction.Predicting;
import rundlauf.cutting.prediction.Prediction;
import rundlauf.maths.Draws;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Unit;

/**
 * Whole predictions, all draws included: a 3 mm two-flute mill in aluminium 6082, 12 ± 3 µm of
 * runout, the place of tooth 1 open.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class PredictBenchmark {
  private static final Draws DRAWS = new Draws(1, 200);
  private static final CutTask RIGID = task(20e6, 0.2);
  private static final CutTask SOFT = task(0.8e6, 0.5);

  @Benchmark
  public Prediction rigid() {
    return Predicting.predict(RIGID, DRAWS, Predicting.STATES);
  }

  @Benchmark
  public Prediction soft() {
    return Predicting.predict(SOFT, DRAWS, Predicting.STATES);
  }

  private static CutTask task(double stiffness, double depth) {
    CutterInUse cutter =
        new CutterInUse(
            "",
            Optional.of("end-mill"),
            mm(3),
            2,
            Quantity.exact(Math.toRadians(30), Unit.DEGREE),
            mm(9),
            mm(20),
            mm(3),
            Quantity.exact(580e9, Unit.GIGAPASCAL),
            Optional.of(Quantity.exact(1500e6, Unit.MEGAPASCAL)),
            Optional.of(Quantity.exact(3e-6, Unit.MICROMETRE)),
            Optional.empty());
    CutAsked cut =
        new CutAsked(
            Operation.SLOT,
            Quantity.exact(300, Unit.RPM),
            new Cut.FeedPerTooth(Quantity.exact(15e-6, Unit.MICROMETRE)),
            mm(depth),
            mm(3));
    return new CutTask(
        cutter,
        cut,
        Materials.named("aluminium 6082-T6").orElseThrow(),
        InventedSetup.of(stiffness, 12e-6, DRAWS),
        Allowed.ANYTHING);
  }

  private static Quantity mm(double length) {
    return Quantity.exact(length * 1e-3, Unit.MILLIMETRE);
  }
}
