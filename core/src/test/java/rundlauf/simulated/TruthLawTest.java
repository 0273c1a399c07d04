package rundlauf.simulated;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import rundlauf.maths.Stream;
import rundlauf.quantity.Cause;
import rundlauf.quantity.Measured;
import rundlauf.readings.IndicatorLimits;

/** The parts a truth is put together from. */
class TruthLawTest {
  private static final double UM = 1e-6;

  @Test
  void aLobeReadsEarlierByTheAngleItsShankIsTurnedForward() {
    Lobe lobe = new Lobe(3, 4 * UM, 0.3);
    assertThat(lobe.at(0.3, 0)).isCloseTo(4 * UM, within(1e-15));
    assertThat(lobe.at(0.2, 0.1)).isCloseTo(4 * UM, within(1e-15));
    assertThat(lobe.at(0.3 + Math.PI / 3, 0)).isCloseTo(-4 * UM, within(1e-15));
  }

  @Test
  void aTiltAddsInProportionToTheHeight() {
    Part part = Part.offset(10 * UM, 0).tilted(0.5e-3, Math.PI / 2);
    Offset at = part.at(0.020, 0);
    assertThat(at.a()).isCloseTo(10 * UM, within(1e-15));
    assertThat(at.b()).isCloseTo(10 * UM, within(1e-15));
  }

  @Test
  void whatADialsSheetSaysIsSaidAlongTheMeasuredDirection() {
    Dial dial =
        Dial.clean(10 * UM)
            .leaning(Math.toRadians(60))
            .with(Nuisances.clean().withRetrace(3 * UM).withLimitOfError(8 * UM, 1e-3));
    IndicatorLimits limits = dial.limits("paper");
    assertThat(limits.division()).isCloseTo(5 * UM, within(1e-15));
    assertThat(limits.readTo()).isCloseTo(5 * UM, within(1e-15));
    assertThat(limits.hysteresis().orElseThrow()).isCloseTo(1.5 * UM, within(1e-15));
    assertThat(limits.limitOfError().orElseThrow().over(20 * UM)).isCloseTo(4 * UM, within(1e-15));
  }

  @Test
  void aNoseThatStiffensBendsLessThanItsLine() {
    Nose nose = Nose.clean(0.5e6).withStiffening(0.01);
    assertThat(nose.bend(20)).isCloseTo(32 * UM, within(1e-12));
    assertThat(nose.bend(-20)).isCloseTo(-32 * UM, within(1e-12));
  }

  @Test
  void aTachometerThatReadsHighReadsHighEverywhereButAtRest() {
    var high = new Tachometer(0.5, 0, 0.02);
    assertThat(high.steps(100, Stream.of(1, "tachometer"))).isEqualTo(204);
    assertThat(high.steps(0, Stream.of(1, "tachometer"))).isZero();
  }

  @Test
  void aLongerContactArmMakesLessForceAndALongerLoadArmMore() {
    // 0.75 kg · 9.80665 m/s² · 180 / 60
    var lever = new Lever(0.75, 0.001, 0.18, 0.0005, 0.06, 0.0005);
    // source: from memory: g_n = 9.80665 m/s² (3rd CGPM, 1901); 22.065 N
    assertThat(lever.newtons()).isCloseTo(22.065, within(5e-4));
    Measured scale = lever.scale("rig/lever");
    assertThat(effect(scale, "load-arm")).isCloseTo(0.0005 / 0.18 / Math.sqrt(3), within(1e-12));
    assertThat(effect(scale, "contact-arm"))
        .isCloseTo(-0.0005 / 0.06 / Math.sqrt(3), within(1e-12));
    assertThat(effect(scale, "mass")).isCloseTo(0.001 / 0.75 / Math.sqrt(3), within(1e-12));
  }

  private static double effect(Measured scale, String part) {
    return scale.effects().getOrDefault(Cause.rectangular("rig/lever", part), Double.NaN);
  }

  @Test
  void restingAnywhereInThePlayFillsItAndNoMore() {
    Nose loose = Nose.clean(1e9).withPlay(20 * UM, 0);
    Shank stiff = Shank.clean(20e-3, 580e9, 0.001);
    var plan = new LoadPlan(List.of(0, 1), List.of(0.0), false, 400);
    Dial fine = Dial.clean(1e-9).zeroed(Dial.Zero.FIRST);
    TakenLoad taken = LoadBench.take(4, loose, stiff, Lever.exact(1), plan, fine);
    double[] resting =
        taken.rows().stream()
            .filter(r -> r.count() == 0)
            .mapToDouble(r -> r.step() * 1e-9)
            .toArray();
    double low = Arrays.stream(resting).min().orElseThrow();
    double high = Arrays.stream(resting).max().orElseThrow();
    assertThat(high - low).isBetween(19.5 * UM, 20.01 * UM);
  }

  @Test
  void restingWhereItWasPushedStaysThere() {
    Nose loose = Nose.clean(1e9).withPlay(20 * UM, 1);
    Shank stiff = Shank.clean(20e-3, 580e9, 0.001);
    var plan = new LoadPlan(List.of(1, 0), List.of(0.0, Math.PI), false, 1);
    TakenLoad taken = LoadBench.take(4, loose, stiff, Lever.exact(1), plan, Dial.clean(1e-9));
    double apart = (taken.rows().get(1).step() - taken.rows().get(3).step()) * 1e-9;
    assertThat(apart).isCloseTo(20 * UM, within(5e-9));
  }
}
