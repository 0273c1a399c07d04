package rundlauf.reduce.runout;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.Function;
import rundlauf.maths.Draws;
import rundlauf.maths.Stream;
import rundlauf.maths.Work;
import rundlauf.quantity.Figure;
import rundlauf.simulated.Dial;
import rundlauf.simulated.Holding;
import rundlauf.simulated.Lobe;
import rundlauf.simulated.Nuisances;
import rundlauf.simulated.RunoutBench;
import rundlauf.simulated.RunoutPlan;
import rundlauf.simulated.TakenRunout;

/** How often a runout figure's interval holds the truth, over many trials taken on paper. */
final class RunoutCoverage {
  static final double DIVISION = 10e-6;
  static final double ANGLE_LIMIT = Math.toRadians(3);

  private RunoutCoverage() {}

  /**
   * One kind of trial.
   *
   * @param positions a turn, evenly spaced
   * @param scatter sd of a reading, in divisions
   * @param eccentricity in divisions
   */
  record Cell(int positions, double scatter, double eccentricity) {}

  /**
   * What came out.
   *
   * @param trials how many
   * @param held how many intervals held the truth
   * @param width mean width of the intervals, in divisions
   */
  record Outcome(int trials, int held, double width) {
    double share() {
      return held / (double) trials;
    }

    Outcome plus(Outcome other) {
      int all = trials + other.trials;
      double mean = (trials * width + other.trials * other.width) / all;
      return new Outcome(all, held + other.held, mean);
    }

    @Override
    public String toString() {
      return String.format(Locale.ROOT, "%.1f %% (%.2f)", 100 * share(), width);
    }
  }

  /**
   * Eccentricity at one station; the dial's zero by turns anywhere, on the first reading and on the
   * lowest.
   */
  static Outcome eccentricity(Cell cell, int trials, Nuisances others, Lobe... form) {
    Nuisances nuisances = others.withScatter(cell.scatter() * DIVISION);
    Outcome sum = new Outcome(0, 0, 0);
    for (int t = 0; t < trials; t++) {
      Stream stream = Stream.of(t, cell.toString());
      var zero = Dial.Zero.values()[t % 3];
      var dial = Dial.clean(DIVISION).zeroed(zero).with(nuisances);
      var plan = RunoutPlan.oneTurn(5e-3, cell.positions());
      double highSpot = 2 * Math.PI * stream.uniform();
      var holding = Holding.clean(cell.eccentricity() * DIVISION, highSpot).with(form);
      var taken = RunoutBench.take(stream, holding, plan, dial);
      sum =
          sum.plus(
              judged(
                  taken,
                  t,
                  OptionalDouble.empty(),
                  r -> r.stations().get(0).eccentricity(),
                  cell.eccentricity() * DIVISION));
    }
    return sum;
  }

  /** Reduces a trial and compares one figure with its truth. */
  static Outcome judged(
      TakenRunout taken,
      int trial,
      OptionalDouble tip,
      Function<Runout, Figure> figure,
      double truth) {
    var readings = taken.readings("trial " + trial, tip, ANGLE_LIMIT);
    Runout runout = RunoutReduction.reduce(readings, Draws.DEFAULT, Work.sequential());
    var interval = figure.apply(runout).estimate().orElseThrow().interval();
    boolean held = interval.low() <= truth + 1e-12 && truth - 1e-12 <= interval.high();
    return new Outcome(1, held ? 1 : 0, (interval.high() - interval.low()) / DIVISION);
  }
}
