package rundlauf.perf;

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
import rundlauf.cutting.Coefficients;
import rundlauf.cutting.Conditions;
import rundlauf.cutting.Operation;
import rundlauf.cutting.Tool;
import rundlauf.cutting.ToolRunout;
import rundlauf.cutting.force.ForceTurn;
import rundlauf.cutting.force.RigidForces;
import rundlauf.cutting.force.SoftForces;
import rundlauf.cutting.force.SoftTurn;

/** Forces over a turn of one state: a 3 mm two-flute mill, a slot 1 mm deep, 12 µm of runout. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class CutBenchmark {
  private static final Tool TOOL = new Tool(3e-3, 2, Math.toRadians(30), 9e-3, 20e-3, 3e-3, 580e9);
  private static final Conditions CUT = new Conditions(Operation.SLOT, 300, 15e-6, 1e-3, 3e-3);
  private static final ToolRunout RUNOUT = new ToolRunout(12e-6, 0.7, 0.2e-3, 1.1);
  private static final Coefficients ALUMINIUM =
      new Coefficients.LinearEdge(631e6, 99e6, 273e6, 13e3, 10e3, 2.8e3);
  private static final Coefficients POWER = new Coefficients.Kienzle(700e6, 0.25, 0.4, 0.2, true);
  private static final double COMPLIANCE = 1 / 0.5e6;

  @Benchmark
  public ForceTurn rigid() {
    return RigidForces.over(TOOL, CUT, RUNOUT, ALUMINIUM, RigidForces.ANGLES);
  }

  @Benchmark
  public ForceTurn rigidKienzle() {
    return RigidForces.over(TOOL, CUT, RUNOUT, POWER, RigidForces.ANGLES);
  }

  @Benchmark
  public SoftTurn softKienzle() {
    return SoftForces.over(TOOL, CUT, RUNOUT, POWER, COMPLIANCE, COMPLIANCE, SoftForces.ANGLES);
  }

  @Benchmark
  public SoftTurn soft() {
    return SoftForces.over(TOOL, CUT, RUNOUT, ALUMINIUM, COMPLIANCE, COMPLIANCE, SoftForces.ANGLES);
  }
}
