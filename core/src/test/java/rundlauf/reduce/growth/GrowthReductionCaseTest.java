package rundlauf.reduce.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rundlauf.reduce.growth.WarmingNose.point;
import static rundlauf.reduce.growth.WarmingNose.readings;
import static rundlauf.reduce.growth.WarmingNose.reduce;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import rundlauf.maths.RiseFit;
import rundlauf.maths.Samples;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Saying;
import rundlauf.readings.GrowthReadings;
import rundlauf.readings.GrowthReadings.Point;
import rundlauf.readings.IndicatorLimits;

class GrowthReductionCaseTest {
  private static final double MINUTE = 60;

  private static List<Point> made(double growth, double tau, double every, int count) {
    WarmingNose nose = new WarmingNose(growth, tau, 0, every, 0);
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      points.add(point(i * every, 7e-6 + nose.at(i * every)));
    }
    return points;
  }

  private static List<String> codes(List<Saying> sayings) {
    return sayings.stream().map(Saying::code).toList();
  }

  @Test
  void fineReadingsGiveBackWhatWasPutIn() {
    Growth found = reduce(readings(1e-9, made(-40e-6, 8 * MINUTE, 2 * MINUTE, 25)));
    // source: recomputed: y = 7 µm − 40 µm (1 − exp(−t/8 min)), to a fine dial's step; settled at
    // 3 τ, where e⁻³ = 4.98 % are left
    assertThat(found.growth().value()).isCloseTo(-40e-6, Percentage.withPercentage(0.1));
    assertThat(found.timeConstant().value()).isCloseTo(480, Percentage.withPercentage(0.1));
    assertThat(found.settledAfter().value()).isCloseTo(1440, Percentage.withPercentage(0.1));
    assertThat(found.cautions()).isEmpty();
    assertThat(codes(found.advice()))
        .containsExactly("growth-warm-up", "growth-left", "side-load-dial-limit-unknown");
    assertThat(((Missing) found.perKelvin()).why().code()).isEqualTo("growth-no-temperature");
  }

  @Test
  void agreesWithLeastSquaresWhereTheDialIsFine() {
    // source: from memory: NIST StRD, BoxBOD as heights in µm over minutes; with a level of its
    // own its curve of least squares is that of RiseFit, which gives the certified one without
    double[] x = {1, 2, 3, 5, 7, 10};
    double[] y = {109, 149, 149, 191, 213, 224};
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < x.length; i++) {
      points.add(point(x[i] * MINUTE, y[i] * 1e-6));
    }
    Growth found = reduce(readings(1e-9, points));
    Samples times = Samples.of(x).map(t -> (t - 1) * MINUTE);
    RiseFit fit = RiseFit.of(times, Samples.of(y).map(r -> r * 1e-6), true, 12, 5400);
    Figure.Estimate growth = found.growth().estimate().orElseThrow();
    assertThat(growth.interval().holds(fit.linear().coefficients().get(1))).isTrue();
    assertThat(found.curve().rise().mean())
        .isCloseTo(fit.linear().coefficients().get(1), Percentage.withPercentage(10));
  }

  @Test
  void aRiseThatDoesNotBendIsABound() {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i <= 10; i++) {
      points.add(point(i * 3 * MINUTE, i * 3e-6));
    }
    Growth found = reduce(readings(1e-6, points));
    Figure.Estimate growth = found.growth().estimate().orElseThrow();
    // source: recomputed: 3 µm every 3 minutes for half an hour
    assertThat(growth.value()).isCloseTo(30e-6, within(1.5e-6));
    assertThat(growth.interval().low()).isBetween(28e-6, 30e-6);
    assertThat(growth.interval().high()).isGreaterThan(90e-6);
    assertThat(((Missing) found.timeConstant()).why())
        .isEqualTo(Saying.of("growth-not-bent", "timeConstant"));
    assertThat(((Missing) found.settledAfter()).why().code()).isEqualTo("growth-not-bent");
    assertThat(codes(found.cautions())).containsExactly("growth-still-rising");
  }

  @Test
  void noGrowthIsNotTimed() {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i <= 12; i++) {
      points.add(point(i * 5 * MINUTE, i % 4 == 0 ? 10e-6 : 0));
    }
    Growth found = reduce(readings(10e-6, points));
    assertThat(found.growth().estimate().orElseThrow().interval().holds(0)).isTrue();
    assertThat(((Missing) found.timeConstant()).why().code()).isEqualTo("growth-too-faint");
    assertThat(found.cautions()).isEmpty();
  }

  @Test
  void growthOverTheRiseOfTemperature() {
    List<Point> points = new ArrayList<>();
    for (Point p : made(40e-6, 8 * MINUTE, 2 * MINUTE, 25)) {
      double degrees = 20 + Math.rint(10 * 16 * -Math.expm1(-p.time() / (8 * MINUTE))) / 10;
      points.add(new Point(p.time(), p.reading(), OptionalDouble.of(degrees), 1));
    }
    Growth found = reduce(readings(1e-9, points));
    // source: recomputed: 40 µm over 16 K; u of a difference of tenths read is 0.1 K/√6
    assertThat(found.perKelvin().value()).isCloseTo(2.5e-6, Percentage.withPercentage(0.5));
    assertThat(found.perKelvin().estimate().orElseThrow().u())
        .isCloseTo(2.5e-6 * 0.1 / Math.sqrt(6) / 16, Percentage.withPercentage(10));
    List<Point> level = new ArrayList<>();
    points.forEach(p -> level.add(new Point(p.time(), p.reading(), OptionalDouble.of(20.1), 1)));
    assertThat(((Missing) reduce(readings(1e-9, level)).perKelvin()).why().code())
        .isEqualTo("growth-not-warmer");
  }

  @Test
  void limitsTakenFromANormAreSaid() {
    GrowthReadings bare = readings(1e-9, made(40e-6, 8 * MINUTE, 2 * MINUTE, 25));
    IndicatorLimits dial = bare.indicator();
    var ofNorm =
        new IndicatorLimits(
            dial.record(),
            dial.division(),
            dial.readTo(),
            dial.limitOfError(),
            dial.hysteresis(),
            dial.repeatability(),
            dial.tipRadius(),
            dial.angle(),
            Optional.of(Saying.of("of-a-norm", "indicator")));
    Growth found =
        reduce(
            new GrowthReadings(
                bare.head(), ofNorm, bare.reference(), bare.warmedBefore(), bare.points()));
    assertThat(codes(found.advice())).contains("of-a-norm");
  }

  @Test
  void aWarmStartIsCautioned() {
    GrowthReadings cold = readings(1e-9, made(40e-6, 8 * MINUTE, 2 * MINUTE, 25));
    GrowthReadings warm =
        new GrowthReadings(
            cold.head(), cold.indicator(), cold.reference(), OptionalDouble.of(300), cold.points());
    assertThat(codes(reduce(warm).cautions())).containsExactly("growth-not-cold");
  }
}
