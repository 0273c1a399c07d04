package rundlauf.reduce.sideload;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import rundlauf.maths.Draws;
import rundlauf.maths.Work;
import rundlauf.quantity.Interval;
import rundlauf.quantity.Measured;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Unit;
import rundlauf.readings.LoadReadings;
import rundlauf.readings.LoadReadings.Branch;
import rundlauf.readings.LoadReadings.Point;
import rundlauf.reduce.sideload.Compliances.Reach;

/** The stiffness at other distances from loads at several, on a nose known by its coefficients. */
class ReachMeasuredCaseTest {
  private static final double STEP = 1e-9;
  private static final double MODULUS = 6e11;

  /** µm/N at load a, dial x [mm], for C = 1.2 + 0.01 (a + x) + 0.0008 a x and the shank. */
  private static double travel(double a, double x) {
    double shank = ShankBending.compliance((a + 0.75) / 1e3, (x + 0.75) / 1e3, 3e-3, MODULUS);
    return nose(a, x) + shank * 1e6;
  }

  private static double nose(double a, double x) {
    return 1.2 + 0.01 * (a + x) + 0.0008 * a * x;
  }

  private static List<Point> line(double a, double x) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i <= 10; i++) {
      double load = 5 * (i <= 5 ? i : 10 - i);
      double read = STEP * Math.rint(travel(a, x) * 1e-6 * load / STEP);
      int zeroed = (int) (1000 * a + x);
      Optional<Double> own = a == 10 ? Optional.empty() : Optional.of(a / 1e3);
      points.add(
          new Point(
              load, read, "shank", Optional.of(x / 1e3), 0, 0, Branch.UNSAID, zeroed, i + 1, own));
    }
    return points;
  }

  private static SideLoad reduced(double[]... pairs) {
    List<Point> points = new ArrayList<>();
    for (double[] pair : pairs) {
      points.addAll(line(pair[0], pair[1]));
    }
    var body =
        new LoadReadings.Body(
            Quantity.exact(3e-3, Unit.MILLIMETRE), Quantity.exact(MODULUS, Unit.GIGAPASCAL));
    var readings =
        new LoadReadings(
            PushedNose.HEAD,
            PushedNose.dial(STEP, Optional.empty(), OptionalDouble.empty()),
            Measured.exact(1, Unit.ONE),
            Optional.of(Quantity.exact(0.01, Unit.MILLIMETRE)),
            Optional.of(body),
            Optional.of("table"),
            Optional.empty(),
            points);
    return SideLoadReduction.reduce(readings, new Draws(3, 1000), Work.sequential());
  }

  private static Reach at(SideLoad found, double mm) {
    return found.compliances().reach().stream()
        .filter(r -> Math.abs(r.at() - mm / 1e3) < 1e-9)
        .findFirst()
        .orElseThrow();
  }

  private static Interval interval(Reach reach) {
    return reach.stiffness().estimate().orElseThrow().interval();
  }

  private static List<String> said(SideLoad found) {
    return found.compliances().sayings().stream().map(s -> s.code()).toList();
  }

  @Test
  void threeLinesTellShiftTiltAndWhatCouplesThem() {
    SideLoad found = reduced(new double[] {10, 10}, new double[] {25, 25}, new double[] {25, 10});
    assertThat(said(found)).containsExactly("reach-measured");
    for (double mm : new double[] {5, 20, 40}) {
      // source: recomputed: 1.2 + 0.02 a + 0.0008 a² µm/N and the shank's bending there
      assertThat(at(found, mm).stiffness().value())
          .isCloseTo(1e6 / travel(mm, mm), Percentage.withPercentage(1.5));
      assertThat(interval(at(found, mm)).holds(1e6 / travel(mm, mm))).isTrue();
    }
  }

  @Test
  void theStiffnessAtTheTrialsOwnLoadIsThatOfItsOwnLine() {
    SideLoad alone = reduced(new double[] {10, 10});
    SideLoad among = reduced(new double[] {25, 25}, new double[] {10, 10}, new double[] {25, 10});
    assertThat(among.stiffness().value())
        .isCloseTo(alone.stiffness().value(), Percentage.withPercentage(0.01));
  }

  @Test
  void theOrderOfTheLinesChangesNothing() {
    SideLoad one = reduced(new double[] {10, 10}, new double[] {25, 25}, new double[] {25, 10});
    SideLoad other = reduced(new double[] {25, 10}, new double[] {10, 10}, new double[] {25, 25});
    assertThat(at(other, 30).stiffness().value())
        .isCloseTo(at(one, 30).stiffness().value(), Percentage.withPercentage(0.05));
  }

  @Test
  void twoLinesLeaveOneOpenAndTheIntervalHoldsIt() {
    for (double[] second : new double[][] {{25, 25}, {10, 25}}) {
      SideLoad found = reduced(new double[] {10, 10}, second);
      assertThat(said(found)).containsExactly("reach-limited");
      for (double mm : new double[] {5, 10, 20, 30, 40}) {
        assertThat(interval(at(found, mm)).holds(1e6 / travel(mm, mm)))
            .as("%s at %s: %s", second[0], mm, interval(at(found, mm)))
            .isTrue();
      }
    }
  }

  @Test
  void moreLinesThatTellNoMoreAreNoWorseThanTheTwoFarthestApart() {
    double[] own = {10, 10};
    SideLoad two = reduced(own, new double[] {10, 25});
    for (double[] third : new double[][] {{10, 18}, {25, 10}}) {
      SideLoad found = reduced(own, new double[] {10, 25}, third);
      assertThat(said(found)).containsExactly("reach-limited");
      assertThat(at(found, 30).stiffness().value())
          .isCloseTo(at(two, 30).stiffness().value(), Percentage.withPercentage(0.05));
    }
  }

  @Test
  void oneLineTellsNone() {
    assertThat(reduced(new double[] {10, 10}).compliances().reach()).isEmpty();
    assertThat(said(reduced(new double[] {10, 10}))).containsExactly("reach-no-nose");
  }
}
