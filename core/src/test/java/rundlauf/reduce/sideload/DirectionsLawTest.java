package rundlauf.reduce.sideload;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import rundlauf.maths.Draws;
import rundlauf.maths.Stream;
import rundlauf.maths.Work;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Unit;
import rundlauf.readings.LoadReadings;
import rundlauf.readings.LoadReadings.Branch;
import rundlauf.readings.LoadReadings.Point;

/** The compliance by direction, and by distance. */
class DirectionsLawTest {
  private static final double SOFT = 4e-6;
  private static final double STIFF = 2e-6;

  /** Pushes in even directions, the dial along each, of a nose soft along {@code axis}. */
  private static LoadReadings taken(
      int directions, double axis, double turn, double load, double scatter, Stream stream) {
    List<Point> points = new ArrayList<>();
    double step = scatter > 0 ? 10e-6 : 1e-9;
    for (int d = 0; d < directions; d++) {
      double push = turn + Math.PI * d / directions;
      double off = Math.cos(2 * (push - axis - turn));
      double compliance = (SOFT + STIFF) / 2 + (SOFT - STIFF) / 2 * off;
      double zero = step * stream.uniform();
      for (int i = 0; i < 8; i++) {
        double force = load * (1 + i % 4);
        double read = compliance * force + zero + scatter * stream.gaussian();
        points.add(
            new Point(
                force,
                step * Math.rint(read / step),
                "shank",
                Optional.empty(),
                push,
                push,
                Branch.UNSAID,
                d + 1,
                points.size() + 1));
      }
    }
    var dial = PushedNose.dial(step, Optional.empty(), OptionalDouble.empty());
    return PushedNose.readings(points, scatter > 0 ? 0.015 : 0, dial, PushedNose.HEAD);
  }

  private static Compliances reduced(LoadReadings readings) {
    return SideLoadReduction.reduce(readings, new Draws(3, 800), Work.sequential()).compliances();
  }

  private static Compliances fine(int directions, double degrees, double turn, double load) {
    double axis = Math.toRadians(degrees);
    Stream stream = Stream.of(5, "fine");
    return reduced(taken(directions, axis, Math.toRadians(turn), load, 0, stream));
  }

  @Test
  void axesAreThoseOfTheTensor() {
    for (int directions : new int[] {3, 4, 5}) {
      Compliances found = fine(directions, 25, 0, 5);
      // source: recomputed: principal axes of the tensor that was put in
      assertThat(found.soft().angle().value()).isCloseTo(Math.toRadians(25), within(1e-3));
      assertThat(found.stiff().angle().value()).isCloseTo(Math.toRadians(115), within(1e-3));
      assertThat(found.soft().stiffness().value())
          .isCloseTo(1 / SOFT, Percentage.withPercentage(0.1));
      assertThat(found.stiff().stiffness().value())
          .isCloseTo(1 / STIFF, Percentage.withPercentage(0.1));
    }
  }

  @Test
  void turningAllDirectionsTurnsBothAxesAndNothingElse() {
    Compliances one = fine(4, 25, 0, 5);
    Compliances turned = fine(4, 25, 40, 5);
    double by = Math.toRadians(40);
    assertThat(turned.soft().angle().value())
        .isCloseTo(one.soft().angle().value() + by, within(1e-6));
    assertThat(turned.stiff().angle().value())
        .isCloseTo(one.stiff().angle().value() + by, within(1e-6));
    assertThat(turned.soft().stiffness().value())
        .isCloseTo(one.soft().stiffness().value(), Percentage.withPercentage(1e-3));
  }

  @Test
  void twiceTheLoadsAndTravelsLeaveTheStiffness() {
    assertThat(fine(3, 70, 0, 10).soft().stiffness().value())
        .isCloseTo(fine(3, 70, 0, 5).soft().stiffness().value(), Percentage.withPercentage(0.1));
  }

  @Test
  void twoDirectionsOrADialNotTurnedTellNone() {
    assertThat(why(fine(2, 25, 0, 5))).isEqualTo("directions-too-few");
    LoadReadings three = taken(3, 0.4, 0, 5, 0, Stream.of(5, "fine"));
    List<Point> fixed = new ArrayList<>();
    for (Point p : three.points()) {
      double along = Math.toRadians(10);
      fixed.add(
          new Point(
              p.load(),
              p.reading(),
              p.place(),
              p.at(),
              p.direction() / 2,
              along,
              p.branch(),
              p.zeroed(),
              p.line()));
    }
    assertThat(why(reduced(PushedNose.readings(fixed, 0, three.indicator(), PushedNose.HEAD))))
        .isEqualTo("directions-dial-not-turned");
  }

  private static String why(Compliances found) {
    return ((Missing) found.soft().angle()).why().code();
  }

  @Test
  void intervalsHoldTheTruth() {
    assertThat(held(100)).isGreaterThanOrEqualTo(0.9);
  }

  @Test
  @Tag("long")
  void intervalsHoldTheTruthOverManyTrials() {
    assertThat(held(2000)).isGreaterThanOrEqualTo(0.93);
  }

  /** The least share of trials in which angle or stiffness of an axis was held. */
  private static double held(int trials) {
    int[] held = new int[3];
    int known = 0;
    Stream stream = Stream.of(23, "directions");
    for (int i = 0; i < trials; i++) {
      double axis = Math.toRadians(20 + 50 * stream.uniform());
      Compliances found = reduced(taken(3 + i % 3, axis, 0, 7, 3e-6, stream));
      if (!found.soft().angle().known()) {
        continue;
      }
      known++;
      held[0] += holds(found.soft().angle(), axis) ? 1 : 0;
      held[1] += holds(found.soft().stiffness(), 1 / SOFT) ? 1 : 0;
      held[2] += holds(found.stiff().stiffness(), 1 / STIFF) ? 1 : 0;
    }
    assertThat(known).isGreaterThan(trials * 3 / 4);
    return Math.min(held[0], Math.min(held[1], held[2])) / (double) known;
  }

  private static boolean holds(Figure figure, double truth) {
    return figure.estimate().orElseThrow().interval().holds(truth);
  }

  @Test
  void farOutAndOnALongNoseItIsSofter() {
    LoadReadings r = taken(1, 0, 0, 5, 0, Stream.of(5, "fine"));
    var nose = new LoadReadings.Nose("Heron", Quantity.exact(0.04, Unit.MILLIMETRE));
    var body =
        new LoadReadings.Body(
            Quantity.exact(3e-3, Unit.MILLIMETRE), Quantity.exact(2.1e11, Unit.GIGAPASCAL));
    var there =
        new LoadReadings(
            r.head(),
            r.indicator(),
            r.forceScale(),
            Optional.of(Quantity.exact(0.01, Unit.MILLIMETRE)),
            Optional.of(body),
            r.reference(),
            r.reaction(),
            Optional.of(nose),
            r.points());
    Compliances found = reduced(there);
    // source: recomputed: 4 µm/N at 10 mm less the shank, times (60/50)², and the shank at 20 mm
    double near = ShankBending.compliance(0.01075, 0.01075, 3e-3, 2.1e11);
    double far = ShankBending.compliance(0.02075, 0.02075, 3e-3, 2.1e11);
    double expected = 1 / ((SOFT - near) * 1.44 + far);
    assertThat(found.reach().get(1).stiffness().value())
        .isCloseTo(1 / SOFT, Percentage.withPercentage(0.5));
    assertThat(found.reach().get(2).stiffness().value())
        .isCloseTo(expected, Percentage.withPercentage(2));
    for (List<Compliances.Reach> table : List.of(found.reach(), found.otherNoses())) {
      for (int i = 1; i < table.size(); i++) {
        assertThat(table.get(i).stiffness().value())
            .isLessThan(table.get(i - 1).stiffness().value());
      }
    }
    assertThat(((Missing) reduced(r).soft().angle()).why().code()).isEqualTo("directions-too-few");
    assertThat(reduced(r).reach()).isEmpty();
  }
}
