package rundlauf.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rundlauf.compare.Comparing;
import rundlauf.compare.Comparison.Difference;
import rundlauf.compare.Comparison.Verdict;
import rundlauf.compare.SetupResults;
import rundlauf.maths.Draws;
import rundlauf.reduce.Reduced;

/** Setups of the demo bench that bare numbers would rank and the odds do not. */
class DemoComparisonLawTest {
  private static SetupResults setup(String name) {
    List<Reduced> own =
        DemoResults.files().stream()
            .map(DemoResults::of)
            .filter(r -> r.head().setup().equals(Optional.of(name)))
            .toList();
    return SetupResults.latest(name, own);
  }

  private static Difference difference(String figure) {
    return Comparing.compare(List.of(setup("Heron 3 mm"), setup("Wren 3 mm")), Draws.DEFAULT)
        .pairs()
        .get(0)
        .differences()
        .stream()
        .filter(d -> d.figure().equals(figure))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aTiltLargerByFifteenPercentIsNotProvenLarger() {
    Difference tilt = difference("axis.tilt");
    assertThat(tilt.ofB().value()).isGreaterThan(1.15 * tilt.ofA().value());
    assertThat(tilt.fair()).isTrue();
    assertThat(tilt.verdict()).isEqualTo(Verdict.NOT_PROVEN);
    assertThat(tilt.better()).isEmpty();
  }

  @Test
  void theStiffnessOfTheSamePairIsProven() {
    Difference stiffness = difference("stiffness");
    assertThat(stiffness.verdict()).isEqualTo(Verdict.BETTER);
    assertThat(stiffness.better()).contains("Heron 3 mm");
  }
}
