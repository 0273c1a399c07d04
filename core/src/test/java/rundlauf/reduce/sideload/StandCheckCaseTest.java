package rundlauf.reduce.sideload;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import rundlauf.maths.Draws;
import rundlauf.maths.Samples;
import rundlauf.maths.Work;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Drawn;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Saying;
import rundlauf.readings.IndicatorLimits;
import rundlauf.readings.LoadReadings;
import rundlauf.readings.LoadReadings.Branch;
import rundlauf.readings.LoadReadings.Point;
import rundlauf.readings.LoadReadings.Stand;

/** The dial's own stand, pushed with the lever's force. */
class StandCheckCaseTest {
  private static final double FINE = 1e-9;
  private static final Draws DRAWS = new Draws(1, 4000);

  private static SideLoad reduce(double compliance, Optional<Stand> stand) {
    List<Point> points = new ArrayList<>();
    for (double force : new double[] {0, 5, 10, 15, 20}) {
      double reading = Math.rint(compliance * force / FINE) * FINE;
      points.add(new Point(force, reading, "shank", Optional.empty(), 0, 0, Branch.UNSAID, 1, 1));
    }
    IndicatorLimits dial = PushedNose.dial(FINE, Optional.empty(), OptionalDouble.empty());
    LoadReadings readings = PushedNose.readings(points, 0, dial, PushedNose.HEAD).withStand(stand);
    return SideLoadReduction.reduce(readings, DRAWS, Work.sequential());
  }

  @Test
  void whatTheStandGaveWayIsADoubtOfTheComplianceEitherWay() {
    SideLoad found = reduce(2e-6, Optional.of(new Stand("stand/arm", 0.3e-6)));
    Figure.Share share = found.compliance().budget().get(0);
    // source: JCGM 100:2008, 4.3.7: 6 µm at 20 N either way, u is 0.3 µm/N over √3
    assertThat(share.u()).isCloseTo(0.3e-6 / Math.sqrt(3), Percentage.withPercentage(0.1));
    assertThat(share.cause().record()).isEqualTo("stand/arm");
    assertThat(found.compliance().value()).isCloseTo(2e-6, Percentage.withPercentage(1));
    var interval = found.compliance().estimate().orElseThrow().interval();
    assertThat(interval.high() - interval.low())
        .isCloseTo(2 * 0.95 * 0.3e-6, Percentage.withPercentage(3));
  }

  @Test
  void uncheckedItIsAskedFor() {
    assertThat(reduce(2e-6, Optional.empty()).advice())
        .extracting(s -> s.code())
        .contains("stand-not-checked");
    assertThat(reduce(2e-6, Optional.of(new Stand("stand/arm", 0))).advice())
        .extracting(s -> s.code())
        .doesNotContain("stand-not-checked");
  }

  @Test
  void pushedOffFromItsOwnBodyItMattersMost() {
    List<Point> points = new ArrayList<>();
    for (double force : new double[] {0, 5, 10, 15, 20}) {
      double reading = 2e-6 * force;
      points.add(new Point(force, reading, "shank", Optional.empty(), 0, 0, Branch.UNSAID, 1, 1));
    }
    IndicatorLimits dial = PushedNose.dial(FINE, Optional.empty(), OptionalDouble.empty());
    LoadReadings readings =
        PushedNose.readings(points, 0, dial, PushedNose.HEAD, Optional.of("table"));
    SideLoad found = SideLoadReduction.reduce(readings, DRAWS, Work.sequential());
    assertThat(found.advice())
        .contains(Saying.of("stand-pushed-unchecked", "stiffness", Arg.term("reference-table")))
        .noneMatch(s -> s.code().equals("stand-not-checked"));
  }

  @Test
  void oneStandDoesTheSameToTwoNoses() {
    var stand = Optional.of(new Stand("stand/arm", 0.3e-6));
    Samples a = ((Drawn) reduce(2e-6, stand).compliance()).draws(DRAWS);
    Samples b = ((Drawn) reduce(3e-6, stand).compliance()).draws(DRAWS);
    for (int k = 0; k < 50; k++) {
      double apart = b.get(k) - a.get(k);
      assertThat(apart).isCloseTo(1e-6, Percentage.withPercentage(2));
    }
  }
}
