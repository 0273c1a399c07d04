package rundlauf.reduce.runout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rundlauf.maths.Draws;
import rundlauf.maths.LeastSquares;
import rundlauf.maths.Samples;
import rundlauf.maths.Stream;
import rundlauf.maths.Work;
import rundlauf.quantity.Figure;
import rundlauf.readings.IndicatorLimits;
import rundlauf.readings.RunoutReadings;
import rundlauf.readings.TrialHead;
import rundlauf.reduce.runout.RunoutCoverage.Outcome;

/**
 * Motion in step and out of step holds the truth of the turns that were read, on a coarse dial with
 * angles off by up to ±2°.
 */
class TurnsCoverageLawTest {
  private static final double UM = 1e-6;
  private static final double STEP = 10 * UM;
  private static final double TURN = 2 * Math.PI;
  private static final double ANGLES = Math.toRadians(2);

  private record Tally(Outcome inStep, Outcome outOfStep) {
    Tally plus(Tally other) {
      return new Tally(inStep.plus(other.inStep), outOfStep.plus(other.outOfStep));
    }
  }

  /** Offset, two- and three-lobed form, motion of each turn, and what the needle shows of them. */
  private static final class Spun {
    private final Stream stream;
    private final int positions;
    private final double[] motion;
    private final double[] form;
    private final double[] shown;

    Spun(Stream stream, int positions, int turns, double largest, double scatter) {
      this.stream = stream;
      this.positions = positions;
      motion = new double[positions * turns];
      form = new double[positions];
      shown = new double[positions * turns];
      double offset = 30 * UM * stream.uniform();
      double[] at = {TURN * stream.uniform(), TURN * stream.uniform(), TURN * stream.uniform()};
      double[] lobes = {largest * UM * stream.uniform(), largest / 2 * UM * stream.uniform()};
      double free = 4 * UM * stream.uniform();
      double zero = STEP * stream.uniform();
      for (int i = 0; i < shown.length; i++) {
        double angle = TURN * (i % positions) / positions;
        double set = angle + ANGLES * (2 * stream.uniform() - 1);
        motion[i] = free * stream.gaussian();
        form[i % positions] = lobes(lobes, at, angle);
        double seen = offset * Math.cos(set - at[0]) + lobes(lobes, at, set) + motion[i];
        double needle = zero + seen + scatter * UM * stream.gaussian();
        shown[i] = Math.rint(needle / STEP) * STEP;
      }
    }

    private static double lobes(double[] lobes, double[] at, double angle) {
      return lobes[0] * Math.cos(2 * angle - at[1]) + lobes[1] * Math.cos(3 * angle - at[2]);
    }

    double inStep() {
      Samples angle = Samples.generate(positions, i -> TURN * i / positions);
      var rest = LeastSquares.fit(Curve.rows(angle, List.of(1)), Samples.of(form)).residuals();
      return rest.max() - rest.min();
    }

    double outOfStep() {
      double most = 0;
      for (int p = 0; p < positions; p++) {
        int place = p;
        Samples at =
            Samples.generate(motion.length / positions, m -> motion[m * positions + place]);
        most = Math.max(most, at.max() - at.min());
      }
      return most;
    }

    RunoutReadings readings(int trial) {
      var none = OptionalDouble.empty();
      var dial =
          new IndicatorLimits(
              "dial", STEP, STEP, Optional.empty(), none, none, none, Optional.empty());
      Samples angle = Samples.generate(shown.length, i -> TURN * i / positions);
      var sweep = new RunoutReadings.Sweep(none, 1, none, none, angle, Samples.of(shown), none, 1);
      var head =
          new TrialHead(
              "turns " + trial,
              "runout",
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Map.of());
      return new RunoutReadings(head, dial, none, Optional.empty(), ANGLES, List.of(sweep));
    }
  }

  private static Tally tally(int positions, int turns, double largest, double scatter, int trials) {
    var nothing = new Outcome(0, 0, 0);
    Tally sum = new Tally(nothing, nothing);
    for (int t = 0; t < trials; t++) {
      Stream stream = Stream.of(t, "turns " + positions + " " + turns + " " + largest + scatter);
      var spun = new Spun(stream, positions, turns, largest, scatter);
      Form form =
          RunoutReduction.reduce(spun.readings(t), new Draws(1, 400), Work.sequential())
              .stations()
              .get(0)
              .form();
      sum =
          sum.plus(
              new Tally(
                  judged(form.synchronous(), spun.inStep()),
                  judged(form.asynchronous(), spun.outOfStep())));
    }
    return sum;
  }

  private static Outcome judged(Figure figure, double truth) {
    var interval = figure.estimate().orElseThrow().interval();
    return new Outcome(1, interval.holds(truth) ? 1 : 0, (interval.high() - interval.low()) / UM);
  }

  @ParameterizedTest
  @CsvSource({"8, 3, 8, 1", "12, 5, 8, 2", "8, 4, 0, 0.3", "6, 2, 30, 1"})
  void held(int positions, int turns, double largest, double scatter) {
    Tally tally = tally(positions, turns, largest, scatter, 80);
    // 80 trials: two standard deviations of a share of 95 % are 5 %.
    assertThat(tally.inStep().share()).as(tally.toString()).isGreaterThanOrEqualTo(0.92);
    assertThat(tally.outOfStep().share()).as(tally.toString()).isGreaterThanOrEqualTo(0.92);
  }

  @Tag("long")
  @ParameterizedTest
  @CsvSource({
    "5, 4, 8, 1",
    "8, 3, 8, 1",
    "8, 5, 8, 3",
    "12, 4, 8, 2",
    "16, 10, 8, 2",
    "24, 5, 8, 2",
    "8, 4, 0, 0.5",
    "8, 4, 40, 1",
    "16, 10, 40, 2"
  })
  void heldInEachCell(int positions, int turns, double largest, double scatter) {
    Tally tally = tally(positions, turns, largest, scatter, 1000);
    System.out.printf(
        "| %d | %d | %.0f | %.1f | %s | %s |%n",
        positions, turns, largest, scatter, tally.inStep(), tally.outOfStep());
    assertThat(tally.inStep().share()).as(tally.toString()).isGreaterThanOrEqualTo(0.93);
    assertThat(tally.outOfStep().share()).as(tally.toString()).isGreaterThanOrEqualTo(0.93);
  }
}
