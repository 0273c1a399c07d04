package rundlauf.maths;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class WeightedSamplesLawTest {
  @Test
  void aWholeWeightIsAsGoodAsARepeatedDraw() {
    var weighted = WeightedSamples.of(Samples.of(3, 1, 2), Samples.of(1, 2, 3));
    var repeated = WeightedSamples.of(Samples.of(1, 1, 2, 2, 2, 3));
    assertThat(weighted.mean()).isCloseTo(repeated.mean(), within(1e-12));
    assertThat(weighted.standardDeviation()).isCloseTo(repeated.standardDeviation(), within(1e-12));
    assertThat(weighted.above(1.5)).isCloseTo(4 / 6.0, within(1e-12));
    assertThat(repeated.above(1.5)).isCloseTo(4 / 6.0, within(1e-12));
  }

  @Test
  void quantilesOfEvenDraws() {
    var even = WeightedSamples.of(Samples.generate(1001, i -> i));
    assertThat(even.quantile(0.5)).isCloseTo(500, within(1e-9));
    assertThat(even.quantile(0.025)).isCloseTo(0.025 * 1001 - 0.5, within(1e-9));
    assertThat(even.quantile(0)).isEqualTo(0);
    assertThat(even.quantile(1)).isEqualTo(1000);
  }

  @Test
  void drawsWithoutWeightDoNotCount() {
    var some = WeightedSamples.of(Samples.of(-99, 1, 2, 3, 99), Samples.of(0, 1, 1, 1, 0));
    assertThat(some.mean()).isCloseTo(2, within(1e-12));
    assertThat(some.quantile(0.5)).isCloseTo(2, within(1e-12));
    assertThat(some.above(50)).isZero();
  }
}
