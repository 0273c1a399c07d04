package rundlauf.simulated;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import rundlauf.maths.Samples;
import rundlauf.maths.Stream;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Unit;
import rundlauf.readings.RunoutReadings;
import rundlauf.readings.TrialHead;

/**
 * A runout trial taken on paper, with what was true while it was taken.
 *
 * @param holding the truth about the parts
 * @param dial with what it was read
 * @param sweeps in the order taken
 */
public record TakenRunout(Holding holding, Dial dial, List<Sweep> sweeps) {
  public TakenRunout {
    sweeps = List.copyOf(sweeps);
  }

  /**
   * One way round.
   *
   * @param station from the nut's face [m]
   * @param clamping 1, 2, …
   * @param clocks how collet and shank stood
   * @param truth E of this clamping at this station, with its own scatter
   * @param tilt of this clamping [m/m]
   * @param angles as they were meant [rad]
   * @param steps readings as whole steps of the dial's grid
   * @param swing largest less smallest step over the turn when only a swing was written down
   */
  public record Sweep(
      double station,
      int clamping,
      RunoutPlan.Clamping clocks,
      Offset truth,
      Offset tilt,
      List<Double> angles,
      List<Long> steps,
      OptionalDouble swing) {
    public Sweep {
      angles = List.copyOf(angles);
      steps = List.copyOf(steps);
    }
  }

  /** Swing of the true curve of a sweep, eccentricity and lobes together [m]. */
  public double tir(Sweep sweep) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < 3600; i++) {
      double theta = 2 * Math.PI * i / 3600;
      double y = sweep.truth().at(theta) + holding.form(theta, sweep.clocks().shank());
      low = Math.min(low, y);
      high = Math.max(high, y);
    }
    return high - low;
  }

  /** The shank's true axis, the mean over the clampings whose parts stood as in the first. */
  public Offset meanAt(double height) {
    return mean(s -> s.truth().plus(s.tilt().times(height - s.station())));
  }

  /** Its true tilt, the mean over the same clampings [m/m]. */
  public Offset meanTilt() {
    return mean(Sweep::tilt);
  }

  private Offset mean(Function<Sweep, Offset> of) {
    List<Sweep> same =
        sweeps.stream().filter(s -> s.clocks().equals(sweeps.get(0).clocks())).toList();
    Offset sum = Offset.NONE;
    for (Sweep sweep : same) {
      sum = sum.plus(of.apply(sweep).times(1.0 / same.size()));
    }
    return sum;
  }

  /** What clamping the tool once more gave at {@code height}, parts as in the first clamping. */
  public Offset nextClamping(double height, Stream stream) {
    RunoutPlan.Clamping clocks = sweeps.get(0).clocks();
    return holding
        .mean(height, clocks.collet(), clocks.shank())
        .plus(RunoutBench.chance(stream, holding.clampingScatter()))
        .plus(RunoutBench.chance(stream, holding.tiltScatter()).times(height));
  }

  /**
   * The readings as a trial file understood would give them.
   *
   * @param file begins the ids of the trial's own causes
   * @param tip height of the edges above the nut's face; empty: not said
   * @param angleLimit how well angles are said to be set, half-width [rad]
   */
  public RunoutReadings readings(String file, OptionalDouble tip, double angleLimit) {
    var head =
        new TrialHead(
            file, "runout", Optional.empty(), Optional.empty(), Optional.empty(), Map.of());
    List<RunoutReadings.Sweep> understood = new ArrayList<>();
    int line = 1;
    for (Sweep s : sweeps) {
      understood.add(understood(s, line));
      line += Math.max(1, s.steps().size());
    }
    Optional<Quantity> edges =
        tip.isPresent()
            ? Optional.of(Quantity.exact(tip.getAsDouble(), Unit.MILLIMETRE))
            : Optional.empty();
    return new RunoutReadings(
        head, dial.limits(file), OptionalDouble.empty(), edges, angleLimit, understood);
  }

  private RunoutReadings.Sweep understood(Sweep s, int line) {
    double step = dial.readTo() * Math.cos(dial.angle());
    boolean angles = s.swing().isEmpty();
    return new RunoutReadings.Sweep(
        OptionalDouble.of(s.station()),
        s.clamping(),
        OptionalDouble.of(s.clocks().collet()),
        OptionalDouble.of(s.clocks().shank()),
        angles ? Samples.of(s.angles()) : Samples.of(),
        angles ? Samples.generate(s.steps().size(), i -> s.steps().get(i) * step) : Samples.of(),
        angles ? OptionalDouble.empty() : OptionalDouble.of(s.swing().getAsDouble() * step),
        line);
  }
}
