package rundlauf.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import rundlauf.compare.Comparison.Difference;
import rundlauf.compare.Comparison.Verdict;
import rundlauf.maths.Draws;
import rundlauf.maths.Stream;
import rundlauf.maths.Work;
import rundlauf.readings.LoadReadings;
import rundlauf.readings.LoadReadings.Branch;
import rundlauf.readings.LoadReadings.Point;
import rundlauf.reduce.sideload.PushedNose;
import rundlauf.reduce.sideload.SideLoad;
import rundlauf.reduce.sideload.SideLoadReduction;

/** What is said of the softest direction of two noses, far from round, pushed with one lever. */
class ComparingDirectionsLawTest {
  private static final Draws DRAWS = new Draws(6, 600);
  private static final String SOFT = "directions.soft.stiffness";
  private static final double DIVISION = 10e-6;
  private static final double FORCE_LIMIT = 0.05;

  @Test
  void differencesHoldTheTruth() {
    assertThat(held(25)).isGreaterThanOrEqualTo(0.84);
  }

  @Test
  void equalNosesAreSeldomCalledBetter() {
    assertThat(saidOfEqual(25)).isLessThanOrEqualTo(0.16);
  }

  @Test
  @Tag("long")
  void differencesAndVerdictsOverManyTrials() {
    double held = held(1000);
    double said = saidOfEqual(1000);
    System.out.println("directions compared: held " + held + ", equal called better " + said);
    assertThat(held).isGreaterThanOrEqualTo(0.93);
    assertThat(said).isLessThanOrEqualTo(0.05);
  }

  @Test
  void theLeversDoubtCancels() {
    Stream stream = Stream.of(3, "lever");
    Difference found = compared(8e-6, 8e-6, stream);
    double apart =
        Math.hypot(
            found.ofA().estimate().orElseThrow().u(), found.ofB().estimate().orElseThrow().u());
    assertThat(found.difference().estimate().orElseThrow().u()).isLessThan(0.7 * apart);
  }

  @Test
  void whereThePushesBeginMattersToTheFirstOneOnly() {
    Stream stream = Stream.of(4, "turned");
    Comparison found =
        compared(
            reduce(8e-6, 1, 0, "a.yaml", stream), reduce(4e-6, 1, Math.PI / 4, "b.yaml", stream));
    assertThat(difference(found, SOFT).because()).isEmpty();
    assertThat(difference(found, "compliance").because())
        .extracting(s -> s.about())
        .containsExactly("direction");
  }

  private static double held(int trials) {
    int held = 0;
    for (int t = 0; t < trials; t++) {
      Stream stream = Stream.of(t, "two noses in three directions");
      double a = (4 + 4 * stream.uniform()) * 1e-6;
      double b = (4 + 4 * stream.uniform()) * 1e-6;
      Difference found = compared(a, b, stream);
      held += found.difference().estimate().orElseThrow().interval().holds(1 / a - 1 / b) ? 1 : 0;
    }
    return held / (double) trials;
  }

  private static double saidOfEqual(int trials) {
    int said = 0;
    for (int t = 0; t < trials; t++) {
      Stream stream = Stream.of(t, "equal noses in three directions");
      double both = (4 + 4 * stream.uniform()) * 1e-6;
      said += compared(both, both, stream).verdict() == Verdict.BETTER ? 1 : 0;
    }
    return said / (double) trials;
  }

  /** Softest compliances [m/N] of two noses, one lever off by the same share for both. */
  private static Difference compared(double a, double b, Stream stream) {
    double force = 1 + FORCE_LIMIT * (2 * stream.uniform() - 1);
    return difference(
        compared(reduce(a, force, 0, "a.yaml", stream), reduce(b, force, 0, "b.yaml", stream)),
        SOFT);
  }

  private static Comparison compared(SideLoad a, SideLoad b) {
    return Comparing.compare(
        List.of(new SetupResults("a", List.of(a)), new SetupResults("b", List.of(b))), DRAWS);
  }

  private static Difference difference(Comparison found, String figure) {
    return found.pairs().get(0).differences().stream()
        .filter(d -> d.figure().equals(figure))
        .findFirst()
        .orElseThrow();
  }

  private static SideLoad reduce(
      double soft, double force, double first, String file, Stream stream) {
    double axis = Math.PI * stream.uniform();
    double stiff = soft * (0.2 + 0.3 * stream.uniform());
    List<Point> points = new ArrayList<>();
    for (int d = 0; d < 4; d++) {
      double push = first + Math.PI * d / 4;
      double compliance = (soft + stiff) / 2 + (soft - stiff) / 2 * Math.cos(2 * (push - axis));
      double zero = DIVISION * stream.uniform();
      for (int i = 0; i < 12; i++) {
        double load = 5.0 * (1 + i % 4);
        double surface = compliance * load * force + zero + 2e-6 * stream.gaussian();
        points.add(point(load, surface, push, d + 1));
      }
    }
    var dial = PushedNose.dial(Optional.empty(), OptionalDouble.empty());
    LoadReadings taken =
        PushedNose.readings(points, FORCE_LIMIT, dial, PushedNose.head(file, Map.of()));
    return SideLoadReduction.reduce(taken, DRAWS, Work.sequential());
  }

  private static Point point(double load, double surface, double push, int zeroed) {
    double read = DIVISION * Math.rint(surface / DIVISION);
    return new Point(
        load, read, "shank", Optional.empty(), push, push, Branch.UNSAID, zeroed, zeroed);
  }
}
