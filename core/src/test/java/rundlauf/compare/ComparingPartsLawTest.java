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
import rundlauf.simulated.Part;
import rundlauf.simulated.RunoutBench;
import rundlauf.simulated.RunoutPlan;
import rundlauf.simulated.RunoutPlan.Clamping;

/** What is said of the parts of two spindles read with one dial, and how often it is true. */
class ComparingPartsLawTest {
  private static final double UM = 1e-6;
  private static final double TURN = 2 * Math.PI;
  private static final String COLLET = "parts.collet.eccentricity";

  @Test
  void differencesHoldTheTruth() {
    assertThat(held(25)).isGreaterThanOrEqualTo(0.88);
  }

  @Test
  void equalColletsAreSeldomCalledBetter() {
    assertThat(saidOfEqual(25)).isLessThanOrEqualTo(0.2);
  }

  @Test
  @Tag("long")
  void differencesAndVerdictsOverManyTrials() {
    double held = held(1000);
    double said = saidOfEqual(1000);
    System.out.println("parts compared: held " + held + ", equal ones called better " + said);
    assertThat(held).isGreaterThanOrEqualTo(0.93);
    assertThat(said).isLessThanOrEqualTo(0.1);
  }

  @Test
  void partsReadAtAnotherStationAreNotFairlyCompared() {
    Runout near = reduce(8 * UM, 10e-3, "near", Stream.of(1, "near"));
    Runout far = reduce(8 * UM, 16e-3, "far", Stream.of(2, "far"));
    Difference found = compared(near, far);
    assertThat(found.verdict()).isEqualTo(Verdict.NOT_FAIR);
    assertThat(found.because()).extracting(s -> s.about()).contains("station");
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

  private static Difference compared(double a, double b, Stream stream) {
    return compared(reduce(a, 10e-3, "a", stream), reduce(b, 10e-3, "b", stream));
  }

  private static Difference compared(Runout a, Runout b) {
    return Comparing.compare(
            List.of(new SetupResults("a", List.of(a)), new SetupResults("b", List.of(b))),
            new Draws(4, 600))
        .pairs()
        .get(0)
        .differences()
        .stream()
        .filter(d -> d.figure().equals(COLLET))
        .findFirst()
        .orElseThrow();
  }

  /** Six clampings with one dial, whose smooth error is within its limit. */
  private static Runout reduce(double collet, double station, String file, Stream stream) {
    List<Clamping> clocks = new ArrayList<>();
    for (int[] c : new int[][] {{0, 0}, {2, 0}, {0, 2}, {2, 2}, {1, 3}, {3, 1}}) {
      clocks.add(new Clamping(c[0] * TURN / 4, c[1] * TURN / 4));
    }
    var truth =
        new Holding(
            Part.offset(20 * UM * stream.uniform(), TURN * stream.uniform()),
            Part.offset(collet, TURN * stream.uniform()),
            Part.offset(4 * UM * stream.uniform(), TURN * stream.uniform()),
            List.of(),
            2 * UM,
            0);
    var nuisances = Nuisances.clean().withScatter(2 * UM).withLimitOfError(6 * UM, 1e-3);
    var taken =
        RunoutBench.take(
            stream,
            truth,
            RunoutPlan.oneTurn(station, 8).clamped(clocks.toArray(Clamping[]::new)),
            Dial.clean(10 * UM).with(nuisances));
    return RunoutReduction.reduce(
        taken.readings(file, OptionalDouble.empty(), Math.toRadians(3)),
        new Draws(4, 600),
        Work.sequential());
  }
}
