package rundlauf.reduce.sideload;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static rundlauf.reduce.sideload.WrittenPushes.bothWays;
import static rundlauf.reduce.sideload.WrittenPushes.codes;
import static rundlauf.reduce.sideload.WrittenPushes.point;
import static rundlauf.reduce.sideload.WrittenPushes.reduce;
import static rundlauf.reduce.sideload.WrittenPushes.why;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rundlauf.quantity.Interval;
import rundlauf.quantity.Refused;
import rundlauf.readings.LoadReadings.Branch;
import rundlauf.readings.LoadReadings.Point;

/** What too few loads, sides or directions can tell. */
class SideLoadPartsCaseTest {
  /** A dial so fine that the readings are what was put in. */
  private static final double FINE = 1e-9;

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
}
