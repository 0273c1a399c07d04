package rundlauf.reduce.sideload;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rundlauf.reduce.sideload.WrittenPushes.bothWays;
import static rundlauf.reduce.sideload.WrittenPushes.codes;
import static rundlauf.reduce.sideload.WrittenPushes.point;
import static rundlauf.reduce.sideload.WrittenPushes.readings;
import static rundlauf.reduce.sideload.WrittenPushes.reduce;
import static rundlauf.reduce.sideload.WrittenPushes.why;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import rundlauf.maths.Draws;
import rundlauf.maths.Samples;
import rundlauf.maths.Work;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Interval;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.readings.IndicatorLimits;
import rundlauf.readings.LoadReadings;
import rundlauf.readings.LoadReadings.Branch;
import rundlauf.readings.LoadReadings.Point;
import rundlauf.reduce.push.Straightness;

class SideLoadReductionCaseTest {
  /** A dial so fine that the readings are what was put in. */
  private static final double FINE = 1e-9;

  @Test
  void fineReadingsGiveBackWhatWasPutIn() {
    SideLoad found = reduce(FINE, bothWays(2e-6, 20e-6, 4e-6));
    // source: recomputed: r = 2 µm/N · F ± 10 µm of play ± 2 µm of loop, to a fine dial's step
    assertThat(found.compliance().value()).isCloseTo(2e-6, within(1e-9));
    assertThat(found.stiffness().value()).isCloseTo(0.5e6, within(300.0));
    assertThat(found.play().value()).isCloseTo(20e-6, within(1e-8));
    assertThat(found.hysteresis().value()).isCloseTo(4e-6, within(1e-8));
    assertThat(found.cautions()).isEmpty();
    assertThat(found.lines()).hasSize(2);
    assertThat(found.lines().get(0).compliance()).isCloseTo(2e-6, within(1e-9));
    assertThat(found.lines().get(0).intercept()).isCloseTo(10e-6, within(1e-8));
    assertThat(found.lines().get(1).intercept()).isCloseTo(10e-6, within(1e-8));
  }

  @Test
  void unloadedReadingsDoNotTouchTheSlope() {
    List<Point> points = bothWays(2e-6, 20e-6, 4e-6);
    SideLoad with = reduce(FINE, points);
    List<Point> moved = new ArrayList<>(points);
    moved.add(point(0, 9e-6, 0, Branch.DOWN));
    SideLoad without = reduce(FINE, moved);
    assertThat(without.stiffness().estimate()).isEqualTo(with.stiffness().estimate());
    assertThat(without.play().estimate()).isEqualTo(with.play().estimate());
  }

  @Test
  void forceIsOneCauseOfAllPoints() {
    LoadReadings readings = readings(FINE, bothWays(2e-6, 20e-6, 4e-6), 0.02);
    SideLoad found = reduce(readings);
    // source: JCGM 100:2008, 4.3.7 and 5.1.2: u of the compliance from ± 2 % of force is 2 %/√3
    Figure.Share share = found.compliance().budget().get(0);
    assertThat(share.cause().record()).isEqualTo("rig/lever");
    assertThat(share.u()).isCloseTo(2e-6 * 0.02 / Math.sqrt(3), Percentage.withPercentage(0.5));
    Interval interval = found.compliance().estimate().orElseThrow().interval();
    assertThat(interval.high() / interval.low()).isCloseTo(1.0388, within(0.003));
    assertThat(found.play().estimate().orElseThrow().u()).isLessThan(1e-8);
    assertThat(codes(found.advice())).doesNotContain("side-load-force-exact");
  }

  @Test
  void dialLimitsReachSlopePlayAndLoop() {
    IndicatorLimits.LimitOfError limit =
        new IndicatorLimits.LimitOfError(
            OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), 8e-6, 1e-3);
    IndicatorLimits dial = PushedNose.dial(FINE, Optional.of(limit), OptionalDouble.of(3e-6));
    List<Point> points = bothWays(2e-6, 20e-6, 4e-6);
    SideLoad found = reduce(PushedNose.readings(points, 0, dial, PushedNose.HEAD));
    // source: JCGM 100:2008, 4.3.7: half-widths 8 µm over 20 N of loads, 8 and 3 µm, and 3 µm
    assertThat(found.compliance().estimate().orElseThrow().u())
        .isCloseTo(8e-6 / 20 / Math.sqrt(3), Percentage.withPercentage(3));
    assertThat(found.play().estimate().orElseThrow().u())
        .isCloseTo(Math.hypot(8e-6, 3e-6) / Math.sqrt(3), Percentage.withPercentage(3));
    assertThat(found.hysteresis().estimate().orElseThrow().u())
        .isCloseTo(3e-6 / Math.sqrt(3), Percentage.withPercentage(3));
    assertThat(codes(found.advice())).doesNotContain("side-load-dial-limit-unknown");
  }

  @Test
  void shankIsTakenOut() {
    LoadReadings.Body body =
        new LoadReadings.Body(
            Quantity.exact(3e-3, Unit.MILLIMETRE), Quantity.exact(2.1e11, Unit.GIGAPASCAL));
    Optional<Quantity> contact = Optional.of(Quantity.exact(10e-3, Unit.MILLIMETRE));
    LoadReadings bare = readings(FINE, bothWays(2e-6, 20e-6, 4e-6), 0);
    SideLoad found = reduce(withShank(bare, contact, Optional.of(body)));
    double shank = ShankBending.compliance(10.75e-3, 10.75e-3, 3e-3, 2.1e11);
    assertThat(found.shankCompliance().value()).isCloseTo(shank, Percentage.withPercentage(1e-9));
    assertThat(found.setupStiffness().value())
        .isCloseTo(1 / (2e-6 - shank), Percentage.withPercentage(0.5));
    assertThat(why(reduce(bare).setupStiffness()).code()).isEqualTo("side-load-no-body");
    assertThat(why(reduce(withShank(bare, Optional.empty(), Optional.of(body))).shankCompliance()))
        .isEqualTo(Saying.of("side-load-no-contact", "shank.compliance"));
    LoadReadings stiff = readings(FINE, bothWays(0.4e-6, 20e-6, 4e-6), 0);
    assertThat(why(reduce(withShank(stiff, contact, Optional.of(body))).setupStiffness()).code())
        .isEqualTo("side-load-shank-takes-all");
  }

  private static LoadReadings withShank(
      LoadReadings r, Optional<Quantity> contact, Optional<LoadReadings.Body> body) {
    return new LoadReadings(
        r.head(),
        r.indicator(),
        r.forceScale(),
        contact,
        body,
        r.reference(),
        r.reaction(),
        r.points());
  }

  @Test
  void whatTheDialCannotSeeHasNoStiffness() {
    List<Point> points = new ArrayList<>();
    for (int i = 1; i <= 5; i++) {
      points.add(point(i, 0, 0, Branch.UP));
    }
    SideLoad found = reduce(10e-6, points);
    assertThat(why(found.stiffness()).code()).isEqualTo("side-load-too-stiff");
    assertThat(found.compliance().estimate().orElseThrow().interval().low()).isZero();
    assertThat(found.compliance().estimate().orElseThrow().interval().high()).isPositive();
  }

  @Test
  void aBentLineIsSaid() {
    List<Point> points = new ArrayList<>();
    for (int i = 1; i <= 5; i++) {
      double r = 10e-6 * i + 4e-6 * i * i;
      points.add(point(5 * i, r + 1e-7, 0, Branch.UP));
      points.add(point(5 * i, r - 1e-7, 0, Branch.UP));
    }
    SideLoad found = reduce(FINE, points);
    assertThat(codes(found.cautions())).containsExactly("side-load-bent");
    assertThat(found.straightness().orElseThrow().p()).isLessThan(1e-4);
  }

  @Test
  void lackOfFitByHand() {
    double[] y = {2.0, 2.4, 3.9, 4.1, 5.2, 5.0, 5.6, 6.2};
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < y.length; i++) {
      points.add(point(1 + i / 2, y[i] * 1e-6, 0, Branch.UNSAID));
    }
    Straightness found = reduce(FINE, points).straightness().orElseThrow();
    // source: recomputed: straight line rss 0.816, pure error 0.300 on 4 dof: F = 0.258/0.075 =
    // 3.44; the tail of F on 2 and 4 dof is (1 + F/2)⁻²
    assertThat(found.f()).isCloseTo(3.44, within(1e-9));
    assertThat(found.p()).isCloseTo(Math.pow(1 + 3.44 / 2, -2), within(1e-12));
  }

  @Test
  void aFineDialAgreesWithLeastSquares() {
    double[] noise = {0.3, -1.1, 0.7, 0.2, -0.6, 1.4, -0.9, 0.1, 0.5, -0.8, 0.4, -0.2};
    List<Point> points = new ArrayList<>();
    double[][] rows = new double[noise.length][];
    double[] y = new double[noise.length];
    for (int i = 0; i < noise.length; i++) {
      rows[i] = new double[] {1, 2 * (i + 1)};
      y[i] = 1e-9 * Math.rint(1e9 * (3e-6 * 2 * (i + 1) + noise[i] * 1e-6));
      points.add(point(2 * (i + 1), y[i], 0, Branch.UNSAID));
    }
    var fit = rundlauf.maths.LeastSquares.fit(rows, Samples.of(y));
    double half = rundlauf.maths.Distributions.coverageFactor(0.95, fit.dof()) * fit.u(1);
    Figure.Estimate found =
        SideLoadReduction.reduce(readings(1e-9, points, 0), new Draws(4, 20_000), Work.sequential())
            .compliance()
            .estimate()
            .orElseThrow();
    // source: JCGM 100:2008, H.3 and G.3: least squares with Student's t on 10 dof
    assertThat(found.value()).isCloseTo(fit.coefficients().get(1), within(0.05 * half));
    double width = found.interval().high() - found.interval().low();
    assertThat(width).isCloseTo(2 * half, Percentage.withPercentage(8));
  }
}
