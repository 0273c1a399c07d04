package rundlauf.reduce.runout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rundlauf.maths.Draws;
import rundlauf.maths.Stream;
import rundlauf.maths.Work;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Saying;
import rundlauf.reduce.runout.RunoutCoverage.Outcome;
import rundlauf.simulated.Dial;
import rundlauf.simulated.Holding;
import rundlauf.simulated.Nuisances;
import rundlauf.simulated.Offset;
import rundlauf.simulated.Part;
import rundlauf.simulated.RunoutBench;
import rundlauf.simulated.RunoutPlan;
import rundlauf.simulated.RunoutPlan.Clamping;

/**
 * Parts, their high spots, the scatter between clampings and what the best clock angles give hold
 * the truth as often as they say. The dial is coarse, with a smooth error within its limit and
 * angles off by up to ±3°.
 */
class PartsCoverageLawTest {
  private static final double UM = 1e-6;
  private static final double TURN = 2 * Math.PI;
  private static final double STATION = 10e-3;
  private static final int LONG = 1500;

  /** Clampings; scatter between them [µm]; largest eccentricity of a part [µm]. */
  private static final String CELLS =
      """
      4, 2, 20
      5, 3, 20
      8, 5, 20
      8, 1, 10
      6, 3, 40
      """;

  private record Tally(Outcome part, Outcome spot, Outcome scatter, Outcome best, Outcome now) {
    static Tally empty() {
      var none = new Outcome(0, 0, 0);
      return new Tally(none, none, none, none, none);
    }

    Tally plus(Tally o) {
      return new Tally(
          part.plus(o.part),
          spot.trials() + o.spot.trials() == 0 ? spot : spot.plus(o.spot),
          scatter.plus(o.scatter),
          best.plus(o.best),
          now.plus(o.now));
    }
  }

  private static Clamping[] clocks(int clampings) {
    double[][] quarters = {{0, 0}, {2, 0}, {0, 2}, {2, 2}, {1, 3}, {3, 1}, {1, 1}, {3, 3}};
    List<Clamping> all = new ArrayList<>();
    for (int j = 0; j < clampings; j++) {
      all.add(new Clamping(quarters[j][0] * TURN / 4, quarters[j][1] * TURN / 4));
    }
    return all.toArray(Clamping[]::new);
  }

  private static Holding truth(Stream stream, double largest, double scatter) {
    Part[] parts = new Part[3];
    for (int k = 0; k < 3; k++) {
      parts[k] = Part.offset(largest * stream.uniform(), TURN * stream.uniform());
    }
    return new Holding(parts[0], parts[1], parts[2], List.of(), scatter, 0);
  }

  private static Tally tally(
      int clampings, double scatter, double largest, int trials, Draws draws) {
    Tally sum = Tally.empty();
    for (int t = 0; t < trials; t++) {
      Stream stream = Stream.of(t, "parts " + clampings + " " + scatter + " " + largest);
      Holding truth = truth(stream, largest * UM, scatter * UM);
      var nuisances =
          Nuisances.clean()
              .withScatter(2 * UM)
              .withAngleError(RunoutCoverage.ANGLE_LIMIT)
              .withLimitOfError(6 * UM, 1e-3);
      var dial = Dial.clean(RunoutCoverage.DIVISION).with(nuisances);
      var plan = RunoutPlan.oneTurn(STATION, 8).clamped(clocks(clampings));
      var readings =
          RunoutBench.take(stream, truth, plan, dial)
              .readings("trial " + t, OptionalDouble.empty(), RunoutCoverage.ANGLE_LIMIT);
      Runout runout = RunoutReduction.reduce(readings, draws, Work.sequential());
      sum = sum.plus(judged(runout, truth, stream));
    }
    return sum;
  }

  private static Tally judged(Runout runout, Holding truth, Stream stream) {
    List<Part> parts = List.of(truth.spindle(), truth.collet(), truth.shank());
    Outcome size = new Outcome(0, 0, 0);
    Outcome spot = new Outcome(0, 0, 0);
    for (int k = 0; k < 3; k++) {
      Offset is = parts.get(k).at(STATION, 0);
      size = size.plus(judged(runout.parts().get(k).eccentricity(), is.amplitude()));
      Figure high = runout.parts().get(k).highSpot();
      if (high.known()) {
        double off = Math.IEEEremainder(is.highSpot() - high.value(), TURN);
        spot = spot.plus(judged(high, high.value() + off));
      }
    }
    BestClocking best = runout.bestClocking();
    double collet = set(best.collet().orElseThrow(), stream);
    double shank = set(best.shank().orElseThrow(), stream);
    return new Tally(
        size,
        spot,
        judged(runout.clampingScatter(), truth.clampingScatter()),
        judged(best.tir(), again(truth, collet, shank, stream)),
        judged(best.insteadOf(), again(truth, set(0, stream), set(0, stream), stream)));
  }

  /** A mark set within the angle limit. */
  private static double set(double angle, Stream stream) {
    return angle + RunoutCoverage.ANGLE_LIMIT * (2 * stream.uniform() - 1);
  }

  /** TIR of one more clamping. */
  private static double again(Holding truth, double collet, double shank, Stream stream) {
    double sd = truth.clampingScatter();
    Offset mean = truth.mean(STATION, collet, shank);
    return 2 * mean.plus(new Offset(sd * stream.gaussian(), sd * stream.gaussian())).amplitude();
  }

  private static Outcome judged(Figure figure, double truth) {
    var interval = figure.estimate().orElseThrow().interval();
    boolean held = interval.low() <= truth + 1e-12 && truth - 1e-12 <= interval.high();
    return new Outcome(1, held ? 1 : 0, figure.unit().fromSi(interval.high() - interval.low()));
  }

  @ParameterizedTest
  @CsvSource({"5, 3, 20", "8, 3, 20"})
  void pooled(int clampings, double scatter, double largest) {
    Tally tally = tally(clampings, scatter, largest, 60, new Draws(1, 1000));
    String shown = tally.toString();
    assertThat(tally.part().share()).as(shown).isGreaterThanOrEqualTo(0.91);
    assertThat(tally.spot().share()).as(shown).isGreaterThanOrEqualTo(0.89);
    assertThat(tally.scatter().share()).as(shown).isGreaterThanOrEqualTo(0.88);
    assertThat(tally.best().share()).as(shown).isGreaterThanOrEqualTo(0.88);
    assertThat(tally.now().share()).as(shown).isGreaterThanOrEqualTo(0.88);
  }

  @Tag("long")
  @ParameterizedTest
  @CsvSource(textBlock = CELLS)
  void eachCell(int clampings, double scatter, double largest) {
    Tally tally = tally(clampings, scatter, largest, LONG, new Draws(1, 2000));
    System.out.printf(
        "| %d | %.2g | %.2g | %s | %s | %s | %s | %s |%n",
        clampings,
        scatter,
        largest,
        tally.part(),
        tally.spot(),
        tally.scatter(),
        tally.best(),
        tally.now());
    String shown = tally.toString();
    assertThat(tally.part().share()).as(shown).isGreaterThanOrEqualTo(0.93);
    assertThat(tally.spot().share()).as(shown).isGreaterThanOrEqualTo(0.92);
    assertThat(tally.best().share()).as(shown).isGreaterThanOrEqualTo(0.93);
    assertThat(tally.now().share()).as(shown).isGreaterThanOrEqualTo(0.93);
  }

  @Test
  void aScatterThatTheReadingsHideIsHeld() {
    Outcome held = new Outcome(0, 0, 0);
    for (int t = 0; t < 150; t++) {
      Stream stream = Stream.of(t, "hidden scatter");
      Holding truth = truth(stream, 20 * UM, UM);
      var dial = Dial.clean(RunoutCoverage.DIVISION).with(Nuisances.clean().withScatter(2 * UM));
      var plan = RunoutPlan.oneTurn(STATION, 8).clamped(new Clamping(0, 0), new Clamping(0, 0));
      var readings =
          RunoutBench.take(stream, truth, plan, dial)
              .readings("trial " + t, OptionalDouble.empty(), RunoutCoverage.ANGLE_LIMIT);
      Runout runout = RunoutReduction.reduce(readings, new Draws(1, 500), Work.sequential());
      held = held.plus(judged(runout.clampingScatter(), truth.clampingScatter()));
    }
    assertThat(held.share()).as(held.toString()).isGreaterThanOrEqualTo(0.93);
  }

  @ParameterizedTest
  @CsvSource({"0", "1", "2"})
  void theGuiltyPartIsNamedAndNoOther(int guilty) {
    int named = 0;
    for (int t = 0; t < 10; t++) {
      Stream stream = Stream.of(t, "guilty " + guilty);
      Part[] parts = new Part[3];
      for (int k = 0; k < 3; k++) {
        parts[k] = Part.offset((k == guilty ? 40 : 6) * UM, TURN * stream.uniform());
      }
      var truth = new Holding(parts[0], parts[1], parts[2], List.of(), 2 * UM, 0);
      var dial = Dial.clean(RunoutCoverage.DIVISION).with(Nuisances.clean().withScatter(2 * UM));
      var plan = RunoutPlan.oneTurn(STATION, 8).clamped(clocks(6));
      var readings =
          RunoutBench.take(stream, truth, plan, dial)
              .readings("trial " + t, OptionalDouble.empty(), RunoutCoverage.ANGLE_LIMIT);
      Runout runout = RunoutReduction.reduce(readings, new Draws(1, 1000), Work.sequential());
      String name = runout.parts().get(guilty).name();
      List<Saying> blamed =
          runout.advice().stream().filter(s -> s.code().equals("part-to-blame")).toList();
      assertThat(blamed)
          .allSatisfy(s -> assertThat(s.args().toString()).contains("text=" + name + "]"));
      named += blamed.size();
    }
    assertThat(named).isGreaterThanOrEqualTo(8);
  }
}
