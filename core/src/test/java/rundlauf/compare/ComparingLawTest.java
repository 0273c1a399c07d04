package rundlauf.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import rundlauf.compare.Comparison.Difference;
import rundlauf.compare.Comparison.Verdict;
import rundlauf.maths.Draws;
import rundlauf.maths.Stream;
import rundlauf.maths.Work;
import rundlauf.reduce.sideload.PushedNose;
import rundlauf.reduce.sideload.SideLoad;
import rundlauf.reduce.sideload.SideLoadReduction;

/** What is said of two noses pushed with one lever, and how often it is true. */
class ComparingLawTest {
  private static final Draws DRAWS = new Draws(2, 1000);
  private static final Map<String, String> CONDITIONS =
      Map.of("pin", "ground pin 3 mm", "nut", "8 N m", "warm-up", "15 min", "rotor", "locked");

  @Test
  void differencesHoldTheTruthAndVerdictsAreSeldomWrong() {
    twoNoses(60);
  }

  @Test
  void equalNosesAreSeldomCalledBetter() {
    equalNoses(60);
  }

  @Test
  @Tag("long")
  void differencesAndVerdictsOverManyTrials() {
    twoNoses(1000);
    equalNoses(1000);
  }

  private static void twoNoses(int trials) {
    PushedNose soft = nose(0.30e6);
    PushedNose stiff = nose(0.38e6);
    double truth = 1 / soft.stiffness() - 1 / stiff.stiffness();
    int holds = 0;
    int right = 0;
    int wrong = 0;
    Stream stream = Stream.of(21, "two noses");
    for (int i = 0; i < trials; i++) {
      Difference found = compare(soft, stiff, stream, "compliance");
      holds += found.difference().estimate().orElseThrow().interval().holds(truth) ? 1 : 0;
      right += found.better().filter("stiff"::equals).isPresent() ? 1 : 0;
      wrong += found.better().filter("soft"::equals).isPresent() ? 1 : 0;
    }
    assertThat(holds / (double) trials).isGreaterThanOrEqualTo(0.93);
    assertThat(wrong).isZero();
    assertThat(right / (double) trials).isGreaterThan(0.5);
  }

  private static void equalNoses(int trials) {
    int said = 0;
    Stream stream = Stream.of(22, "equal noses");
    for (int i = 0; i < trials; i++) {
      Difference found = compare(nose(0.3e6), nose(0.3e6), stream, "stiffness");
      said += found.verdict() == Verdict.BETTER ? 1 : 0;
    }
    System.out.println("equal noses called better: " + said / (double) trials);
    // one pair in twenty at most, and four standard errors
    assertThat(said / (double) trials).isLessThan(0.05 + 4 * Math.sqrt(0.05 * 0.95 / trials));
  }

  @Test
  void theLeversDoubtMostlyCancels() {
    Stream stream = Stream.of(23, "lever");
    PushedNose nose = new PushedNose(0.1e6, 5e-6, 0, 0.5e-6, 8, 20, true, false, 0, 0.08);
    SideLoad a = reduce(nose, 1.02, "a.yaml", stream);
    SideLoad b = reduce(nose, 1.02, "b.yaml", stream);
    double apart =
        Math.hypot(
            a.compliance().estimate().orElseThrow().u(),
            b.compliance().estimate().orElseThrow().u());
    Difference found = compared(a, b, "compliance");
    assertThat(found.difference().estimate().orElseThrow().u()).isLessThan(0.5 * apart);
  }

  private static PushedNose nose(double stiffness) {
    return new PushedNose(stiffness, 10e-6, 2e-6, 2e-6, 5, 20, true, true, 0, 0.02);
  }

  private static Difference compare(PushedNose a, PushedNose b, Stream stream, String figure) {
    double force = 1 + 0.02 * (2 * stream.uniform() - 1);
    return compared(reduce(a, force, "a.yaml", stream), reduce(b, force, "b.yaml", stream), figure);
  }

  private static SideLoad reduce(PushedNose nose, double force, String file, Stream stream) {
    return SideLoadReduction.reduce(
        nose.taken(stream, force, PushedNose.head(file, CONDITIONS)), DRAWS, Work.sequential());
  }

  private static Difference compared(SideLoad a, SideLoad b, String figure) {
    return Comparing.compare(
            List.of(new SetupResults("soft", List.of(a)), new SetupResults("stiff", List.of(b))),
            DRAWS)
        .pairs()
        .get(0)
        .differences()
        .stream()
        .filter(d -> d.figure().equals(figure))
        .findFirst()
        .orElseThrow();
  }
}
