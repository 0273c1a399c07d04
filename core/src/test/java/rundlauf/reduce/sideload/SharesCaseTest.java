package rundlauf.reduce.sideload;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rundlauf.reduce.sideload.WrittenPlaces.place;
import static rundlauf.reduce.sideload.WrittenPlaces.reduced;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Interval;
import rundlauf.quantity.Saying;
import rundlauf.readings.LoadReadings.Point;
import rundlauf.reduce.sideload.Shares.Bound;
import rundlauf.reduce.sideload.Shares.Share;

/** Rows of bodies worked by hand, read with a dial so fine that it shows what was put in. */
class SharesCaseTest {
  private static final double UM = 1e-6;

  private static List<Point> joined(List<List<Point>> places) {
    List<Point> all = new ArrayList<>();
    places.forEach(all::addAll);
    return all;
  }

  /**
   * Load at 10 mm. Collet: 0.5 µm/N of shift. Bearings: tip about 20 mm behind the face, 1 µm/N at
   * the load, so 0.002 (20 + x)(20 + 10) / 0.9. Mount: 0.25 of shift. Frame: 0.25 of shift.
   */
  private static List<List<Point>> whole() {
    return List.of(
        place("shank", 10, 2),
        place("nut", 0, 20.0 / 30 + 0.5),
        place("nut", -10, 10.0 / 30 + 0.5),
        place("housing", -30, 0.5),
        place("housing", -50, 0.5),
        place("mount", -40, 0.25),
        place("carriage", -80, 0.25));
  }

  private static List<String> joints(Shares shares) {
    return shares.entries().stream().map(Share::joint).toList();
  }

  private static Figure figure(Shares shares, String joint) {
    return shares.entries().stream()
        .filter(s -> s.joint().equals(joint))
        .findFirst()
        .orElseThrow()
        .compliance();
  }

  @Test
  void twoPlacesOnEachBodyTellEveryJoint() {
    Shares found = reduced(joined(whole()), Optional.of("table"));
    assertThat(joints(found)).containsExactly("shank", "collet", "bearings", "mount", "frame");
    double bending = ShankBending.compliance(0.01075, 0.01075, 3e-3, 6e11);
    // source: by hand: springs in a row, the bearings 1 µm/N at the load; the shank a cantilever
    assertThat(figure(found, "shank").value()).isCloseTo(bending, within(1e-9));
    assertThat(figure(found, "collet").value()).isCloseTo(0.5 * UM - bending, within(2e-9));
    assertThat(figure(found, "bearings").value()).isCloseTo(1 * UM, within(2e-9));
    assertThat(figure(found, "mount").value()).isCloseTo(0.25 * UM, within(2e-9));
    assertThat(figure(found, "frame").value()).isCloseTo(0.25 * UM, within(2e-9));
    assertThat(found.entries()).allMatch(s -> s.bound().isEmpty());
    // source: by hand: 1 of 2 µm/N
    assertThat(found.entries().get(2).share().value()).isCloseTo(0.5, within(1e-3));
    assertThat(codes(found)).containsExactly("shares-most");
  }

  @Test
  void aBodyNotReadJoinsItsJoints() {
    List<Point> points =
        joined(whole().stream().filter(p -> !p.get(0).place().equals("housing")).toList());
    Shares found = reduced(points, Optional.of("table"));
    assertThat(joints(found)).containsExactly("shank", "collet", "bearings+mount", "frame");
    // source: by hand: 1 and 0.25 µm/N
    assertThat(figure(found, "bearings+mount").value()).isCloseTo(1.25 * UM, within(2e-9));
    assertThat(codes(found)).containsExactly("shares-most", "shares-joined");
  }

  @Test
  void aBodyReadOnceBoundsTheJointsOnBothSides() {
    List<List<Point>> places = new ArrayList<>(whole());
    places.remove(2);
    Shares found = reduced(joined(places), Optional.of("table"));
    assertThat(joints(found)).containsExactly("shank", "collet", "bearings", "mount", "frame");
    // source: by hand: the nut moves at least 0.5 + 20/30 µm/N at the load
    Share collet = found.entries().get(1);
    assertThat(collet.bound()).contains(Bound.AT_MOST);
    double bending = figure(found, "shank").value();
    assertThat(collet.compliance().value())
        .isCloseTo((1.5 - 20.0 / 30) * UM - bending, within(2e-9));
    assertThat(interval(collet.compliance()).low()).isZero();
    Share bearings = found.entries().get(2);
    assertThat(bearings.bound()).contains(Bound.AT_LEAST);
    assertThat(bearings.compliance().value()).isCloseTo(20.0 / 30 * UM, within(2e-9));
    // source: by hand: no more than the shank moves over the housing, 2 − 0.5 less its bending
    assertThat(interval(bearings.compliance()).high())
        .isBetween(1.45 * UM - bending, 1.55 * UM - bending / 2);
    assertThat(codes(found)).contains("shares-one-place");
  }

  @Test
  void betweenTwoBodiesReadOnceAJointHasOnlyATop() {
    List<List<Point>> places = new ArrayList<>(whole());
    places.remove(4);
    places.remove(2);
    Shares found = reduced(joined(places), Optional.of("table"));
    // source: by hand: the housing moves at least 0.5 µm/N, so nut and housing differ by no more
    // than shank and housing do
    Share bearings = found.entries().get(2);
    assertThat(bearings.bound()).contains(Bound.AT_MOST);
    assertThat(bearings.compliance().value())
        .isCloseTo(1.5 * UM - figure(found, "shank").value(), within(2e-9));
    Share mount = found.entries().get(3);
    assertThat(mount.bound()).contains(Bound.AT_LEAST);
    assertThat(mount.compliance().value()).isCloseTo(0.25 * UM, within(2e-9));
  }

  @Test
  void aPlaceBeyondTheLoadTurnsTheBound() {
    List<List<Point>> places = new ArrayList<>(whole());
    places.set(5, place("carriage", 40, 0.25));
    places.remove(6);
    Shares found = reduced(joined(places), Optional.of("table"));
    // source: by hand: nearer the load the carriage moves no more than 0.25 µm/N
    assertThat(found.entries().get(3).bound()).contains(Bound.AT_LEAST);
    assertThat(found.entries().get(4).bound()).contains(Bound.AT_MOST);
    assertThat(found.entries().get(4).compliance().value()).isCloseTo(0.25 * UM, within(2e-9));
    assertThat(codes(found)).contains("shares-ahead-of-face");
  }

  @Test
  void theFootEndsTheRow() {
    Shares found = reduced(joined(whole().subList(0, 5)), Optional.of("carriage"));
    assertThat(joints(found)).containsExactly("shank", "collet", "bearings", "mount");
    Shares behind = reduced(joined(whole()), Optional.of("mount"));
    assertThat(joints(behind)).containsExactly("shank", "collet", "bearings", "mount");
    assertThat(codes(behind)).contains("shares-behind-foot");
    Shares base = reduced(joined(whole()), Optional.of("base"));
    assertThat(joints(base).get(4)).isEqualTo("frame+table");
  }

  @Test
  void theShankAtTwoDistancesIsCarriedToTheLoad() {
    List<List<Point>> places = new ArrayList<>(whole());
    double near = ShankBending.compliance(0.01075, 0.00475, 3e-3, 6e11) / UM;
    double far = ShankBending.compliance(0.01075, 0.01675, 3e-3, 6e11) / UM;
    places.set(0, place("shank", 4, 1.7 + near));
    places.add(place("shank", 16, 2.1 + far));
    Shares found = reduced(joined(places), Optional.of("table"));
    // source: by hand: a rigid line from 1.7 at 4 mm to 2.1 at 16 mm is 1.9 at 10 mm
    assertThat(figure(found, "collet").value()).isCloseTo(0.4 * UM, within(4e-9));
  }

  @Test
  void aFootThatIsNotSaidStandsOnTheTableAndItIsSaid() {
    Shares said = reduced(joined(whole()), Optional.of("table"));
    Shares unsaid = reduced(joined(whole()), Optional.empty());
    assertThat(codes(unsaid)).contains("shares-foot-assumed");
    assertThat(codes(said)).doesNotContain("shares-foot-assumed");
    for (int i = 0; i < said.entries().size(); i++) {
      assertThat(unsaid.entries().get(i).joint()).isEqualTo(said.entries().get(i).joint());
      assertThat(unsaid.entries().get(i).compliance().value())
          .isEqualTo(said.entries().get(i).compliance().value());
    }
  }

  @Test
  void whatCannotBeSharedSaysWhy() {
    assertThat(codes(reduced(joined(whole().subList(0, 1)), Optional.of("table"))))
        .containsExactly("shares-one-body");
    assertThat(codes(reduced(joined(whole().subList(1, 7)), Optional.of("table"))))
        .containsExactly("shares-no-whole");
    List<Point> loose = new ArrayList<>(joined(whole().subList(0, 1)));
    loose.addAll(WrittenPlaces.placeless("nut", 1));
    assertThat(codes(reduced(loose, Optional.of("table"))))
        .containsExactly("shares-one-body", "shares-no-distance");
    List<Point> bare = new ArrayList<>(joined(whole().subList(0, 1)));
    bare.add(place("nut", 0, 1).get(0));
    assertThat(codes(reduced(bare, Optional.of("table"))))
        .containsExactly("shares-one-body", "shares-no-line");
    List<Point> across = new ArrayList<>(joined(whole().subList(0, 1)));
    across.addAll(WrittenPlaces.turned(place("nut", 0, 1), Math.PI / 2));
    assertThat(codes(reduced(across, Optional.of("table"))))
        .containsExactly("shares-one-body", "shares-other-push");
  }

  private static Interval interval(Figure figure) {
    return figure.estimate().orElseThrow().interval();
  }

  private static List<String> codes(Shares shares) {
    return shares.sayings().stream().map(Saying::code).toList();
  }
}
