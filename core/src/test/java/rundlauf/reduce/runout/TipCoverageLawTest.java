package rundlauf.reduce.runout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rundlauf.maths.Draws;
import rundlauf.maths.Stream;
import rundlauf.maths.Work;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Interval;
import rundlauf.reduce.runout.RunoutCoverage.Outcome;
import rundlauf.simulated.Dial;
import rundlauf.simulated.Holding;
import rundlauf.simulated.Nuisances;
import rundlauf.simulated.Offset;
import rundlauf.simulated.Part;
import rundlauf.simulated.RunoutBench;
import rundlauf.simulated.RunoutPlan;
import rundlauf.simulated.TakenRunout;

/**
 * The axis at the height of the edges, its high spot, and what the next clamping will be, hold the
 * truth as often as they say. Angles are off by up to ±3°, the dial has a smooth error within its
 * limit.
 */
class TipCoverageLawTest {
  private static final double UM = 1e-6;
  private static final double TIP = 28e-3;
  private static final int LONG = 2000;

  /**
   * Positions, scatter [divisions], eccentricity at the face [divisions], tilt [µm/mm], stations.
   */
  private static final String CELLS =
      """
      8, 0.1, 4, 1, 2
      8, 0.3, 4, 1, 3
      8, 0.3, 1, 0, 2
      8, 0.3, 0, 0, 3
      16, 0.5, 2, 2, 2
      5, 0.1, 6, 0.5, 2
      """;

  private record Tally(Outcome tir, Outcome highSpot) {}

  @ParameterizedTest
  @CsvSource(textBlock = CELLS)
  void pooled(int positions, double scatter, double e, double tilt, int stations) {
    Tally tally = tally(positions, scatter, e, tilt, stations, 100);
    assertThat(tally.tir().share()).as(tally.toString()).isGreaterThanOrEqualTo(0.90);
    if (e > 2) {
      assertThat(tally.highSpot().share()).as(tally.toString()).isGreaterThanOrEqualTo(0.89);
    }
  }

  @Tag("long")
  @ParameterizedTest
  @CsvSource(textBlock = CELLS)
  void eachCell(int positions, double scatter, double e, double tilt, int stations) {
    Tally tally = tally(positions, scatter, e, tilt, stations, LONG);
    System.out.printf(
        "| %d | %.2g | %.2g | %.2g | %d | %s | %s |%n",
        positions, scatter, e, tilt, stations, tally.tir(), tally.highSpot());
    assertThat(tally.tir().share()).as(tally.toString()).isGreaterThanOrEqualTo(0.93);
  }

  private static Tally tally(
      int positions, double scatter, double e, double tilt, int stations, int trials) {
    var nuisances =
        Nuisances.clean()
            .withScatter(scatter * RunoutCoverage.DIVISION)
            .withAngleError(RunoutCoverage.ANGLE_LIMIT)
            .withLimitOfError(6 * UM, 1e-3);
    var plan = RunoutPlan.oneTurn(5e-3, positions);
    plan = stations == 2 ? plan.at(5e-3, 17e-3) : plan.at(5e-3, 11e-3, 17e-3);
    Outcome tir = new Outcome(0, 0, 0);
    Outcome spot = new Outcome(0, 0, 0);
    for (int t = 0; t < trials; t++) {
      Stream stream = Stream.of(t, "tip " + positions + scatter + e + tilt);
      double turn = 2 * Math.PI;
      Part part =
          Part.offset(e * RunoutCoverage.DIVISION, turn * stream.uniform())
              .tilted(tilt * 1e-3, turn * stream.uniform());
      var holding = new Holding(part, Part.TRUE, Part.TRUE, List.of(), 0, 0);
      var dial = Dial.clean(RunoutCoverage.DIVISION).with(nuisances);
      TakenRunout taken = RunoutBench.take(stream, holding, plan, dial);
      Offset truth = holding.mean(TIP, 0, 0);
      Runout runout = reduce(taken, t);
      tir = tir.plus(judged(runout.axis().tip().tir(), 2 * truth.amplitude()));
      Figure high = runout.axis().tip().highSpot();
      if (high.known()) {
        double off = Math.IEEEremainder(truth.highSpot() - high.value(), turn);
        spot = spot.plus(judged(high, high.value() + off));
      }
    }
    return new Tally(tir, spot);
  }

  private static Runout reduce(TakenRunout taken, int trial) {
    return RunoutReduction.reduce(
        taken.readings("trial " + trial, OptionalDouble.of(TIP), RunoutCoverage.ANGLE_LIMIT),
        Draws.DEFAULT,
        Work.sequential());
  }

  private static Outcome judged(Figure figure, double truth) {
    Interval interval = figure.estimate().orElseThrow().interval();
    boolean held = interval.low() <= truth + 1e-12 && truth - 1e-12 <= interval.high();
    return new Outcome(1, held ? 1 : 0, figure.unit().fromSi(interval.high() - interval.low()));
  }

  @ParameterizedTest
  @CsvSource({"3, 60, 0.90", "5, 60, 0.90", "2, 60, 0.88"})
  void theNextClampingFallsIntoItsInterval(int clampings, int trials, double least) {
    assertThat(nextClamping(clampings, trials).share()).isGreaterThanOrEqualTo(least);
  }

  @Tag("long")
  @ParameterizedTest
  @CsvSource({"2", "3", "5"})
  void theNextClampingFallsIntoItsIntervalOften(int clampings) {
    Outcome outcome = nextClamping(clampings, LONG);
    System.out.printf("| %d | %s |%n", clampings, outcome);
    assertThat(outcome.share()).isGreaterThanOrEqualTo(0.93);
  }

  private static Outcome nextClamping(int clampings, int trials) {
    Outcome sum = new Outcome(0, 0, 0);
    for (int t = 0; t < trials; t++) {
      Stream stream = Stream.of(t, "next " + clampings);
      var holding =
          Holding.clean(20 * UM * stream.uniform(), 2 * Math.PI * stream.uniform())
              .withScatter(8 * UM, 0);
      var dial = Dial.clean(RunoutCoverage.DIVISION).with(Nuisances.clean().withScatter(2 * UM));
      var plan = RunoutPlan.oneTurn(5e-3, 8).clampedTimes(clampings + 1);
      TakenRunout all = RunoutBench.take(stream, holding, plan, dial);
      double truth = all.sweeps().get(clampings).truth().amplitude();
      var known = new TakenRunout(all.holding(), all.dial(), all.sweeps().subList(0, clampings));
      sum = sum.plus(judged(reduce(known, t).nextClamping().eccentricity(), truth));
    }
    return sum;
  }
}
