package rundlauf.reduce.sideload;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

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
import rundlauf.quantity.Missing;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Refused;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.readings.IndicatorLimits;
import rundlauf.readings.LoadReadings;
import rundlauf.readings.LoadReadings.Branch;
import rundlauf.readings.LoadReadings.Point;

class SideLoadReductionCaseTest {
  private static final Draws DRAWS = new Draws(1, 2000);

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
  void oneSideGivesALowerBoundOfThePlayAndSaysSo() {
    List<Point> points = new ArrayList<>();
    points.add(point(0, -4e-6, 0, Branch.UP));
    for (int i = 1; i <= 6; i++) {
      points.add(point(5 * i, 10e-6 + 5e-6 * i, 0, Branch.UP));
    }
    SideLoad found = reduce(FINE, points);
    // source: recomputed: intercept 10 µm less the unloaded reading −4 µm
    assertThat(found.play().value()).isCloseTo(14e-6, within(1e-8));
    assertThat(codes(found.cautions())).containsExactly("side-load-play-lower-bound");
    SideLoad bare = reduce(FINE, points.subList(1, points.size()));
    assertThat(why(bare.play()).code()).isEqualTo("side-load-play-one-sided");
    assertThat(bare.cautions()).isEmpty();
  }

  @Test
  void oneLoadGivesASecantAndSaysSo() {
    List<Point> points = List.of(point(0, 0, 0, Branch.UP), point(19, 90e-6, 0, Branch.UP));
    SideLoad found = reduce(10e-6, points);
    // source: recomputed: 90 µm for 19 N; each reading within half a step, so ± 10 µm at most, and
    // the scatter that is assumed
    assertThat(found.compliance().value()).isCloseTo(90e-6 / 19, within(0.3e-6));
    Interval interval = found.compliance().estimate().orElseThrow().interval();
    assertThat(interval.high() - interval.low()).isBetween(12e-6 / 19, 40e-6 / 19);
    assertThat(codes(found.cautions())).containsExactly("side-load-secant");
    assertThat(codes(found.advice())).contains("side-load-scatter-assumed");
    assertThat(why(found.play()).code()).isEqualTo("side-load-play-needs-loads");
    assertThat(found.straightness()).isEmpty();
  }

  @Test
  void oneLoadToBothSidesIsASecantToo() {
    List<Point> points = List.of(point(19, 90e-6, 0, Branch.UP), point(19, -70e-6, 180, Branch.UP));
    SideLoad found = reduce(FINE, points);
    assertThat(found.compliance().value()).isCloseTo(80e-6 / 19, within(1e-9));
    assertThat(codes(found.cautions())).containsExactly("side-load-secant");
  }

  @Test
  void oneLoadAloneIsRefused() {
    List<Point> alone = List.of(point(19, 90e-6, 0, Branch.UP), point(19, 92e-6, 0, Branch.UP));
    assertThatThrownBy(() -> reduce(FINE, alone))
        .isInstanceOfSatisfying(
            Refused.class, r -> assertThat(r.saying().code()).isEqualTo("side-load-one-load"));
    List<Point> none = List.of(point(0, 0, 0, Branch.UP));
    assertThatThrownBy(() -> reduce(FINE, none))
        .isInstanceOfSatisfying(
            Refused.class, r -> assertThat(r.saying().code()).isEqualTo("side-load-no-load"));
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
  void otherDirectionsAndPlacesAreLeftOutAndSaid() {
    List<Point> points = bothWays(2e-6, 20e-6, 4e-6);
    SideLoad plain = reduce(FINE, points);
    List<Point> more = new ArrayList<>(points);
    more.add(
        new Point(10, 5e-6, "shank", Optional.empty(), Math.PI / 2, Math.PI / 2, Branch.UP, 2, 1));
    more.add(new Point(10, 5e-6, "nut", Optional.empty(), 0, 0, Branch.UP, 3, 1));
    more.add(new Point(20, 7e-6, "nut", Optional.empty(), 0, 0, Branch.UP, 3, 1));
    SideLoad found = reduce(FINE, more);
    assertThat(found.stiffness().estimate()).isEqualTo(plain.stiffness().estimate());
    assertThat(codes(found.advice()))
        .contains("side-load-other-directions", "side-load-other-places");
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
    SideLoad.Straightness found = reduce(FINE, points).straightness().orElseThrow();
    // source: recomputed: straight line rss 0.816, pure error 0.300 on 4 dof: F = 0.258/0.075 =
    // 3.44; the tail of F on 2 and 4 dof is (1 + F/2)⁻²
    assertThat(found.f()).isCloseTo(3.44, within(1e-9));
    assertThat(found.p()).isCloseTo(Math.pow(1 + 3.44 / 2, -2), within(1e-12));
  }

  @Test
  void oppositePushesOnTwoSettingsOfTheDialTellNoPlay() {
    List<Point> points = new ArrayList<>();
    for (Point p : bothWays(2e-6, 20e-6, 4e-6)) {
      int zeroed = p.direction() > 1 ? 2 : 1;
      points.add(
          new Point(
              p.load(), p.reading(), "shank", p.at(), p.direction(), 0, p.branch(), zeroed, 1));
    }
    points.removeIf(p -> p.load() == 0);
    SideLoad found = reduce(FINE, points);
    assertThat(found.compliance().value()).isCloseTo(2e-6, within(1e-9));
    assertThat(why(found.play()).code()).isEqualTo("side-load-play-one-sided");
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

  private static List<Point> bothWays(double compliance, double play, double loop) {
    List<Point> points = new ArrayList<>();
    for (int direction = 0; direction <= 180; direction += 180) {
      double sign = direction == 0 ? 1 : -1;
      points.add(point(0, sign * play / 5, direction, Branch.UP));
      for (int i = 1; i <= 5; i++) {
        double up = compliance * 5 * i + play / 2 - loop / 2;
        points.add(point(5 * i, sign * up, direction, Branch.UP));
      }
      for (int i = 4; i >= 1; i--) {
        double down = compliance * 5 * i + play / 2 + loop / 2;
        points.add(point(5 * i, sign * down, direction, Branch.DOWN));
      }
    }
    return points;
  }

  private static Point point(double load, double reading, double degrees, Branch branch) {
    return new Point(
        load, reading, "shank", Optional.empty(), Math.toRadians(degrees), 0, branch, 1, 1);
  }

  private static LoadReadings readings(double step, List<Point> points, double forceLimit) {
    IndicatorLimits dial = PushedNose.dial(step, Optional.empty(), OptionalDouble.empty());
    return PushedNose.readings(points, forceLimit, dial, PushedNose.HEAD);
  }

  private static SideLoad reduce(double step, List<Point> points) {
    return reduce(readings(step, points, 0));
  }

  private static SideLoad reduce(LoadReadings readings) {
    return SideLoadReduction.reduce(readings, DRAWS, Work.sequential());
  }

  private static Saying why(Figure figure) {
    return ((Missing) figure).why();
  }

  private static List<String> codes(List<Saying> sayings) {
    return sayings.stream().map(Saying::code).toList();
  }
}
