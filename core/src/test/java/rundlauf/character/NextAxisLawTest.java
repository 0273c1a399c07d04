package rundlauf.character;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rundlauf.maths.Stream;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Interval;
import rundlauf.reduce.runout.Runout;
import rundlauf.simulated.Dial;
import rundlauf.simulated.Holding;
import rundlauf.simulated.Nuisances;
import rundlauf.simulated.Offset;
import rundlauf.simulated.Part;
import rundlauf.simulated.RunoutBench;
import rundlauf.simulated.RunoutPlan;
import rundlauf.simulated.TakenRunout;

/** What the next clamping will be at a cutter's tip holds the truth as often as it says. */
class NextAxisLawTest {
  private static final double UM = 1e-6;
  private static final int LONG = 2000;
  private static final String SETUP = "Heron 3 mm";

  /** How the simulated shank is clamped, and how often the truth was held. */
  private record Tally(int trials, int held) {
    double share() {
      return (double) held / trials;
    }

    Tally plus(boolean one) {
      return new Tally(trials + 1, held + (one ? 1 : 0));
    }
  }

  @ParameterizedTest
  @CsvSource({"3, 20", "3, 40", "5, 12"})
  void carriedAlongTheTilt(int clampings, double stickout) {
    assertThat(tally(clampings, stickout, 40).share()).isGreaterThanOrEqualTo(0.87);
  }

  @Tag("long")
  @ParameterizedTest
  @CsvSource({"3, 20", "3, 40", "5, 12"})
  void carriedAlongTheTiltOften(int clampings, double stickout) {
    Tally tally = tally(clampings, stickout, LONG);
    System.out.printf("| %d | %.0f | %.3f |%n", clampings, stickout, tally.share());
    assertThat(tally.share()).isGreaterThanOrEqualTo(0.93);
  }

  private static Tally tally(int clampings, double stickout, int trials) {
    Tally tally = new Tally(0, 0);
    for (int t = 0; t < trials; t++) {
      Stream stream = Stream.of(t, "next axis " + clampings);
      Part part =
          Part.offset(20 * UM * stream.uniform(), 2 * Math.PI * stream.uniform())
              .tilted(1e-3 * stream.uniform(), 2 * Math.PI * stream.uniform());
      var holding = new Holding(part, Part.TRUE, Part.TRUE, List.of(), 4 * UM, 0.15e-3);
      TakenRunout all =
          RunoutBench.take(stream, holding, plan(5e-3, 17e-3).clampedTimes(clampings + 1), dial());
      TakenRunout.Sweep next = all.sweeps().get(all.sweeps().size() - 1);
      Offset truth = next.truth().plus(next.tilt().times(stickout * 1e-3 - next.station()));
      Runout runout = known(all, 2 * clampings, t);
      Trait e = MadeBench.heron(SETUP, stickout, List.of(runout)).eccentricity();
      tally = tally.plus(held(e.figure(), truth.amplitude()));
    }
    return tally;
  }

  @Test
  void oneStationIsCarriedByAnAssumedTiltThatIsWideEnough() {
    Tally tally = new Tally(0, 0);
    double sd = PermittedTilt.component(Optional.of(3e-3));
    for (int t = 0; t < 60; t++) {
      Stream stream = Stream.of(t, "one station");
      double lean = sd * Math.hypot(stream.gaussian(), stream.gaussian());
      Part part =
          Part.offset(20 * UM * stream.uniform(), 2 * Math.PI * stream.uniform())
              .tilted(lean, 2 * Math.PI * stream.uniform());
      var holding = new Holding(part, Part.TRUE, Part.TRUE, List.of(), 4 * UM, 0);
      TakenRunout all = RunoutBench.take(stream, holding, plan(5e-3).clampedTimes(4), dial());
      TakenRunout.Sweep next = all.sweeps().get(3);
      Offset truth = next.truth().plus(next.tilt().times(20e-3 - next.station()));
      Trait e = MadeBench.heron(SETUP, 20, List.of(known(all, 3, t))).eccentricity();
      tally = tally.plus(held(e.figure(), truth.amplitude()));
      assertThat(e.origin()).isEqualTo(Origin.ASSUMED);
      assertThat(e.from().get(0).code()).isEqualTo("tilt-assumed");
    }
    assertThat(tally.share()).isGreaterThanOrEqualTo(0.88);
  }

  @Test
  void atItsOwnStationOneStationAssumesNoTilt() {
    TakenRunout taken = oneClamping(plan(5e-3).clampedTimes(3));
    Runout runout = MadeBench.runout(taken, "a.yaml", "2026-03-01", SETUP);
    Trait here = MadeBench.heron(SETUP, 5, List.of(runout)).eccentricity();
    Trait out = MadeBench.heron(SETUP, 20, List.of(runout)).eccentricity();
    assertThat(here.origin()).isEqualTo(Origin.MEASURED);
    assertThat(here.figure().estimate()).isEqualTo(runout.nextClamping().eccentricity().estimate());
    assertThat(width(out)).isGreaterThan(1.2 * width(here));
    assertThat(MadeBench.heron(SETUP, 5, List.of(runout)).tilt().assumed()).isTrue();
  }

  @Test
  void atTheHeightOfTheGaugesTipItIsWhatTheTrialSays() {
    TakenRunout taken = oneClamping(plan(5e-3, 17e-3).clampedTimes(3));
    Runout runout = MadeBench.runout(taken, "a.yaml", "2026-03-01", SETUP);
    Trait e = MadeBench.heron(SETUP, MadeBench.TIP * 1e3, List.of(runout)).eccentricity();
    assertThat(e.origin()).isEqualTo(Origin.MEASURED);
    assertThat(e.figure().estimate()).isEqualTo(runout.nextClamping().eccentricity().estimate());
    assertThat(e.figure().budget()).isEqualTo(runout.nextClamping().eccentricity().budget());
  }

  @Test
  void withOneClampingTheScatterIsAssumedAndSaid() {
    TakenRunout taken = oneClamping(plan(5e-3, 17e-3));
    Runout runout = MadeBench.runout(taken, "a.yaml", "2026-03-01", SETUP);
    Trait e = MadeBench.heron(SETUP, 20, List.of(runout)).eccentricity();
    assertThat(e.assumed()).isTrue();
    assertThat(e.from()).extracting(s -> s.code()).containsExactly("scatter-assumed");
  }

  @Test
  void theLatestTrialOfTheSetupCountsAndNoOthers() {
    TakenRunout taken = oneClamping(plan(5e-3, 17e-3));
    Runout older = MadeBench.runout(taken, "b.yaml", "2026-02-01", SETUP);
    Runout newer = MadeBench.runout(taken, "a.yaml", "2026-03-01", SETUP);
    Runout other = MadeBench.runout(taken, "c.yaml", "2026-04-01", "Heron chuck");
    Trait tilt = MadeBench.heron(SETUP, 20, List.of(newer, older, other)).tilt();
    assertThat(tilt.from().get(0).args().toString()).contains("a.yaml");
    Trait none = MadeBench.heron("Heron 1/8 in", 20, List.of(newer, older, other)).eccentricity();
    assertThat(none.origin()).isEqualTo(Origin.MISSING);
  }

  private static TakenRunout oneClamping(RunoutPlan plan) {
    Part part = Part.offset(15 * UM, 1).tilted(0.5e-3, 2);
    var holding = new Holding(part, Part.TRUE, Part.TRUE, List.of(), 2 * UM, 0);
    return RunoutBench.take(Stream.of(1, "one"), holding, plan, dial());
  }

  private static RunoutPlan plan(Double... stations) {
    return RunoutPlan.oneTurn(5e-3, 8).at(stations);
  }

  private static Dial dial() {
    return Dial.clean(10 * UM).with(Nuisances.clean().withScatter(2 * UM));
  }

  private static Runout known(TakenRunout all, int sweeps, int trial) {
    var known = new TakenRunout(all.holding(), all.dial(), all.sweeps().subList(0, sweeps));
    return MadeBench.runout(known, "trial " + trial, "2026-03-01", SETUP);
  }

  private static boolean held(Figure figure, double truth) {
    Interval interval = figure.estimate().orElseThrow().interval();
    return interval.low() <= truth && truth <= interval.high();
  }

  private static double width(Trait trait) {
    Interval interval = trait.figure().estimate().orElseThrow().interval();
    return interval.high() - interval.low();
  }
}
