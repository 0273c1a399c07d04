package rundlauf.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import rundlauf.maths.Samples;
import rundlauf.maths.Stream;

class PolarLawTest {
  private static final double UM = 1e-6;

  /** Three draws at 20 µm for each two at 10 µm, all in one direction. */
  private static DrawnVector twoSizes() {
    Stream stream = Stream.of(1, "sizes");
    Samples a =
        Samples.generate(1000, i -> (i % 5 < 2 ? 10 : 20) * UM + 0.01 * UM * stream.gaussian());
    return new DrawnVector(a, a.map(x -> 0.001 * x), Map.of());
  }

  @Test
  void everyDrawWeighsOneOverItsMagnitude() {
    Drawn magnitude = Polar.magnitude(twoSizes(), Unit.MICROMETRE);
    // source: recomputed: 2/10 against 3/20: four sevenths of the weight lie at 10 µm, and 2/5 of
    // the draws
    assertThat(magnitude.probabilityOver(15 * UM)).isCloseTo(3.0 / 7, within(1e-3));
    assertThat(magnitude.value()).isCloseTo(10 * UM, within(0.1 * UM));
  }

  @Test
  void theIntervalReachesZeroWhereZeroIsNotExcluded() {
    Stream stream = Stream.of(2, "around");
    DrawnVector around =
        new DrawnVector(stream.gaussians(2000), stream.gaussians(2000).map(x -> x + 1), Map.of());
    assertThat(Polar.zeroExcluded(around)).isFalse();
    assertThat(Polar.magnitude(around, Unit.METRE).estimate().orElseThrow().interval().low())
        .isZero();
    assertThat(Polar.angle(around, "here").known()).isFalse();
    DrawnVector far =
        new DrawnVector(stream.gaussians(2000), stream.gaussians(2000).map(x -> x + 6), Map.of());
    assertThat(Polar.zeroExcluded(far)).isTrue();
    Figure.Estimate angle = Polar.angle(far, "here").estimate().orElseThrow();
    assertThat(angle.value()).isCloseTo(Math.PI / 2, within(0.02));
    // source: recomputed: a unit normal across 6 has its quantiles of 1.75 % at ± 2.108, over 6
    assertThat(angle.interval().high() - angle.value()).isCloseTo(2.108 / 6, within(0.03));
  }
}
