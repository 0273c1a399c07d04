package rundlauf.simulated;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import rundlauf.maths.Stream;

/** Takes runout trials on paper. */
public final class RunoutBench {
  private RunoutBench() {}

  /** The trial that {@code seed} gives: same arguments, same readings. */
  public static TakenRunout take(long seed, Holding holding, RunoutPlan plan, Dial dial) {
    return take(Stream.of(seed, "runout"), holding, plan, dial);
  }

  /** The trial with the next numbers of {@code stream}. */
  public static TakenRunout take(Stream stream, Holding holding, RunoutPlan plan, Dial dial) {
    double beginning = dial.beginning(stream);
    List<TakenRunout.Sweep> sweeps = new ArrayList<>();
    for (int c = 0; c < plan.clampings().size(); c++) {
      Offset shift = chance(stream, holding.clampingScatter());
      Offset lean = chance(stream, holding.tiltScatter());
      for (double station : plan.stations()) {
        Offset by = shift.plus(lean.times(station));
        sweeps.add(sweep(stream, holding, plan, dial, c, station, by, lean, beginning));
      }
    }
    return new TakenRunout(holding, dial, sweeps);
  }

  private static TakenRunout.Sweep sweep(
      Stream stream,
      Holding holding,
      RunoutPlan plan,
      Dial dial,
      int clamping,
      double station,
      Offset by,
      Offset lean,
      double beginning) {
    RunoutPlan.Clamping clocks = plan.clampings().get(clamping);
    Offset truth = holding.mean(station, clocks.collet(), clocks.shank()).plus(by);
    Offset tilt =
        holding
            .mean(1, clocks.collet(), clocks.shank())
            .plus(holding.mean(0, clocks.collet(), clocks.shank()).times(-1))
            .plus(lean);
    List<Double> angles = new ArrayList<>();
    List<Double> surface = new ArrayList<>();
    for (int i = 0; i < plan.readings(); i++) {
      double meant = plan.angle(i);
      double set = meant + dial.nuisances().angleError() * (2 * stream.uniform() - 1);
      angles.add(meant);
      surface.add(truth.at(set) + holding.form(set, clocks.shank()));
    }
    List<Long> steps = dial.steps(surface, beginning, stream);
    return new TakenRunout.Sweep(
        station, clamping + 1, clocks, truth, tilt, angles, steps, swing(plan, steps));
  }

  private static OptionalDouble swing(RunoutPlan plan, List<Long> steps) {
    if (!plan.swingOnly()) {
      return OptionalDouble.empty();
    }
    long low = steps.stream().mapToLong(Long::longValue).min().orElseThrow();
    long high = steps.stream().mapToLong(Long::longValue).max().orElseThrow();
    return OptionalDouble.of(high - low);
  }

  static Offset chance(Stream stream, double sd) {
    return sd > 0 ? new Offset(sd * stream.gaussian(), sd * stream.gaussian()) : Offset.NONE;
  }
}
