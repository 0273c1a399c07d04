package rundlauf.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import rundlauf.compare.Comparison.Difference;
import rundlauf.compare.Comparison.Verdict;
import rundlauf.maths.Draws;
import rundlauf.maths.Stream;
import rundlauf.maths.Work;
import rundlauf.reduce.runout.Runout;
import rundlauf.reduce.runout.RunoutReduction;
import rundlauf.simulated.Dial;
import rundlauf.simulated.Holding;
import rundlauf.simulated.Nuisances;
import rundlauf.simulated.Offset;
import rundlauf.simulated.Part;
import rundlauf.simulated.RunoutBench;
import rundlauf.simulated.RunoutPlan;
import rundlauf.simulated.RunoutPlan.Clamping;

/** What is said of two spindles' runout, parts and best clocking read with one dial. */
class ComparingPartsLawTest {
  private static final double UM = 1e-6;
  private static final double TURN = 2 * Math.PI;
  private static final double STATION = 10e-3;
  private static final double ANGLE_LIMIT = Math.toRadians(3);
  private static final String COLLET = "parts.collet.eccentricity";
  private static final String BEST = "bestClocking.tir";
  private static final String TIR = "stations.tir";

  @Test
  void differencesHoldTheTruth() {
    assertThat(held(25)).isGreaterThanOrEqualTo(0.88);
  }

  @Test
  void equalColletsAreSeldomCalledBetter() {
    assertThat(saidOfEqual(25)).isLessThanOrEqualTo(0.12);
  }

  @Test
  void nextClampingsSetBestFallWithinTheDifference() {
    assertThat(bestHeld(20)).isGreaterThanOrEqualTo(0.84);
  }

  @Test
  void equalRunoutsAreSeldomCalledBetter() {
    assertThat(saidOfEqualRunouts(60)).isLessThanOrEqualTo(0.14);
  }

  @Test
  @Tag("long")
  void differencesAndVerdictsOverManyTrials() {
    double held = held(1000);
    double said = saidOfEqual(1000);
    double best = bestHeld(1000);
    double runouts = saidOfEqualRunouts(1000);
    System.out.println("parts compared: held " + held + ", equal ones called better " + said);
    System.out.println("best clocking held " + best + ", equal runouts better " + runouts);
    assertThat(held).isGreaterThanOrEqualTo(0.93);
    assertThat(said).isLessThanOrEqualTo(0.05);
    assertThat(best).isGreaterThanOrEqualTo(0.93);
    // one pair in twenty, and two standard errors
    assertThat(runouts).isLessThanOrEqualTo(0.064);
  }

  @Test
  void partsReadAtAnotherStationAreNotFairlyCompared() {
    Runout near =
        reduce(truth(8 * UM, Stream.of(1, "near")), STATION, "near", Stream.of(1, "read"));
    Runout far = reduce(truth(8 * UM, Stream.of(2, "far")), 16e-3, "far", Stream.of(2, "read"));
    Difference found = compared(near, far, COLLET);
    assertThat(found.verdict()).isEqualTo(Verdict.NOT_FAIR);
    assertThat(found.because()).extracting(s -> s.about()).contains("station");
  }

  @Test
  void rangesOverTheTurnsReadTellNoSpindleFromAnother() {
    Difference found = compared(turns("a", 0), turns("b", 20 * UM), NamedFigure.ASYNCHRONOUS);
    assertThat(found.aSmaller().orElseThrow()).isGreaterThan(0.99);
    assertThat(found.verdict()).isEqualTo(Verdict.NOT_FAIR);
    assertThat(found.because()).extracting(s -> s.code()).containsExactly("compare-turns-read");
  }

  private static Runout turns(String file, double motion) {
    var dial = Dial.clean(10 * UM).with(Nuisances.clean().withScatter(motion));
    var plan = RunoutPlan.oneTurn(STATION, 8).forTurns(4);
    var taken = RunoutBench.take(Stream.of(9, file), Holding.clean(20 * UM, 1), plan, dial);
    return RunoutReduction.reduce(
        taken.readings(file, OptionalDouble.empty(), 0), new Draws(4, 600), Work.sequential());
  }

  private static double held(int trials) {
    int held = 0;
    for (int t = 0; t < trials; t++) {
      Stream stream = Stream.of(t, "two collets");
      double a = 15 * UM * stream.uniform();
      double b = 15 * UM * stream.uniform();
      Difference found = compared(a, b, stream);
      held += found.difference().estimate().orElseThrow().interval().holds(a - b) ? 1 : 0;
    }
    return held / (double) trials;
  }

  private static double saidOfEqual(int trials) {
    int said = 0;
    for (int t = 0; t < trials; t++) {
      Stream stream = Stream.of(t, "equal collets");
      double both = 15 * UM * stream.uniform();
      said += compared(both, both, stream).verdict() == Verdict.BETTER ? 1 : 0;
    }
    return said / (double) trials;
  }

  /** The next clampings of both, their marks set within the angle limit. */
  private static double bestHeld(int trials) {
    int held = 0;
    for (int t = 0; t < trials; t++) {
      Stream stream = Stream.of(t, "two clockings");
      Holding a = truth(15 * UM * stream.uniform(), stream);
      Holding b = truth(15 * UM * stream.uniform(), stream);
      Runout first = reduce(a, STATION, "a", stream);
      Runout second = reduce(b, STATION, "b", stream);
      double next = again(a, first, stream) - again(b, second, stream);
      Difference found = compared(first, second, BEST);
      held += found.difference().estimate().orElseThrow().interval().holds(next) ? 1 : 0;
    }
    return held / (double) trials;
  }

  private static double again(Holding truth, Runout told, Stream stream) {
    double sd = truth.clampingScatter();
    double collet = told.bestClocking().collet().orElseThrow();
    double shank = told.bestClocking().shank().orElseThrow();
    Offset mean = truth.mean(STATION, set(collet, stream), set(shank, stream));
    return 2 * mean.plus(new Offset(sd * stream.gaussian(), sd * stream.gaussian())).amplitude();
  }

  private static double set(double angle, Stream stream) {
    return angle + ANGLE_LIMIT * (2 * stream.uniform() - 1);
  }

  /** Read in as many places and with as much scatter as make its interval hold 95 % and no more. */
  private static double saidOfEqualRunouts(int trials) {
    int said = 0;
    for (int t = 0; t < trials; t++) {
      Stream stream = Stream.of(t, "equal runouts");
      var truth = Holding.clean(20 * UM, TURN * stream.uniform());
      Difference found = compared(oneTurn(truth, "a", stream), oneTurn(truth, "b", stream), TIR);
      said += found.verdict() == Verdict.BETTER ? 1 : 0;
    }
    return said / (double) trials;
  }

  private static Runout oneTurn(Holding truth, String file, Stream stream) {
    var dial = Dial.clean(10 * UM).with(Nuisances.clean().withScatter(3 * UM));
    var taken = RunoutBench.take(stream, truth, RunoutPlan.oneTurn(STATION, 24), dial);
    return RunoutReduction.reduce(
        taken.readings(file, OptionalDouble.empty(), 0), new Draws(4, 600), Work.sequential());
  }

  private static Difference compared(double a, double b, Stream stream) {
    return compared(
        reduce(truth(a, stream), STATION, "a", stream),
        reduce(truth(b, stream), STATION, "b", stream),
        COLLET);
  }

  private static Difference compared(Runout a, Runout b, String figure) {
    return Comparing.compare(
            List.of(new SetupResults("a", List.of(a)), new SetupResults("b", List.of(b))),
            new Draws(4, 600))
        .pairs()
        .get(0)
        .differences()
        .stream()
        .filter(d -> d.figure().equals(figure))
        .findFirst()
        .orElseThrow();
  }

  /** A spindle of any part's direction, its collet off by so much. */
  private static Holding truth(double collet, Stream stream) {
    return new Holding(
        Part.offset(20 * UM * stream.uniform(), TURN * stream.uniform()),
        Part.offset(collet, TURN * stream.uniform()),
        Part.offset(4 * UM * stream.uniform(), TURN * stream.uniform()),
        List.of(),
        2 * UM,
        0);
  }

  /** Six clampings with one dial, whose smooth error is within its limit. */
  private static Runout reduce(Holding truth, double station, String file, Stream stream) {
    List<Clamping> clocks = new ArrayList<>();
    for (int[] c : new int[][] {{0, 0}, {2, 0}, {0, 2}, {2, 2}, {1, 3}, {3, 1}}) {
      clocks.add(new Clamping(c[0] * TURN / 4, c[1] * TURN / 4));
    }
    var nuisances = Nuisances.clean().withScatter(2 * UM).withLimitOfError(6 * UM, 1e-3);
    var taken =
        RunoutBench.take(
            stream,
            truth,
            RunoutPlan.oneTurn(station, 8).clamped(clocks.toArray(Clamping[]::new)),
            Dial.clean(10 * UM).with(nuisances));
    return RunoutReduction.reduce(
        taken.readings(file, OptionalDouble.empty(), ANGLE_LIMIT),
        new Draws(4, 600),
        Work.sequential());
  }
}
