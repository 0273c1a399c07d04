package rundlauf.maths;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

class RiseFitCaseTest {
  private static final Samples X = Samples.of(1, 2, 3, 5, 7, 10);
  private static final Samples Y = Samples.of(109, 149, 149, 191, 213, 224);

  @Test
  void theCertifiedFitOfBoxBod() {
    RiseFit fit = RiseFit.of(X, Y, false, 0.2, 100);
    double rise = fit.linear().coefficients().get(0);
    double all = rise / -Math.expm1(-10 / fit.timeConstant());
    // source: from memory: NIST StRD, BoxBOD: b1 213.80940889, b2 0.54723748542, residual sum of
    // squares 1168.0088766; SciPy 1.17.1 curve_fit gives 213.809409, 0.547237, 1168.00888
    assertThat(all).isCloseTo(213.80940889, within(1e-7));
    assertThat(1 / fit.timeConstant()).isCloseTo(0.54723748542, within(1e-10));
    assertThat(fit.linear().rss()).isCloseTo(1168.0088766, within(1e-6));
  }

  @Test
  void whatWasPutInWithALevelOfItsOwn() {
    Samples times = Samples.of(0, 1, 2, 4, 8, 16);
    Samples readings = times.map(t -> 3 + 7 * -Math.expm1(-t / 4));
    RiseFit fit = RiseFit.of(times, readings, true, 0.1, 200);
    // source: recomputed: y = 3 + 7 (1 − exp(−t/4)), of which 1 − exp(−4) is seen
    assertThat(fit.timeConstant()).isCloseTo(4, Percentage.withPercentage(1e-7));
    assertThat(fit.linear().coefficients().get(0)).isCloseTo(3, within(1e-7));
    assertThat(fit.linear().coefficients().get(1)).isCloseTo(7 * -Math.expm1(-4), within(1e-7));
  }

  @Test
  void aStraightRiseHasNoTimeConstantOfItsOwn() {
    Samples times = Samples.of(0, 1, 2, 3, 4);
    RiseFit fit = RiseFit.of(times, times.map(t -> 2 * t), true, 0.1, 40);
    assertThat(fit.timeConstant()).isCloseTo(40, within(1e-9));
  }

  @Test
  void shareRunsFromNothingToAll() {
    assertThat(RiseFit.share(0, 10, 3)).isZero();
    assertThat(RiseFit.share(10, 10, 3)).isEqualTo(1);
    // source: recomputed: limits of a slow rise and of a fast one
    assertThat(RiseFit.share(4, 10, 1e9)).isCloseTo(0.4, within(1e-8));
    assertThat(RiseFit.share(4, 10, 1e-3)).isEqualTo(1);
  }
}
