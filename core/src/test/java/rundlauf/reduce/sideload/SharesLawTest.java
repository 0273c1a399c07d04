package rundlauf.reduce.sideload;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rundlauf.maths.Draws;
import rundlauf.maths.Stream;
import rundlauf.maths.Work;
import rundlauf.quantity.Figure;
import rundlauf.readings.LoadReadings;
import rundlauf.readings.LoadReadings.Point;
import rundlauf.simulated.TakenRow;

/** Shares of rows of bodies that were made up, their truth known. */
class SharesLawTest {
  private static final Draws DRAWS = new Draws(5, 600);

  private static Shares shares(LoadReadings readings) {
    return SideLoadReduction.reduce(readings, DRAWS, Work.sequential()).compliances().shares();
  }

  private static LoadReadings made(long seed) {
    return PushedRow.taken(Stream.of(seed, "row"), PushedRow.TWICE, 10e-6, 2e-6).readings("row");
  }

  private static LoadReadings with(LoadReadings r, List<Point> points) {
    return new LoadReadings(
        r.head(),
        r.indicator(),
        r.forceScale(),
        r.contact(),
        r.body(),
        r.reference(),
        r.reaction(),
        points);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void sharesAddUpToTheWhole(long seed) {
    Shares found = shares(made(seed));
    assertThat(found.entries()).hasSize(5);
    double share = found.entries().stream().mapToDouble(s -> s.share().value()).sum();
    // source: by hand: the joints in a row are all that gives way
    assertThat(share).isCloseTo(1, within(1e-9));
  }

  @Test
  void theOrderOfThePlacesChangesNothing() {
    LoadReadings taken = made(1);
    List<List<Point>> places = new ArrayList<>();
    taken
        .points()
        .forEach(
            p -> {
              if (places.isEmpty() || places.get(places.size() - 1).get(0).zeroed() != p.zeroed()) {
                places.add(new ArrayList<>());
              }
              places.get(places.size() - 1).add(p);
            });
    Collections.shuffle(places.subList(1, places.size()), new Random(4));
    LoadReadings other = with(taken, places.stream().flatMap(List::stream).toList());
    same(shares(other), shares(taken));
  }

  @Test
  void turningEveryDirectionChangesNothing() {
    LoadReadings taken = made(2);
    same(shares(with(taken, WrittenPlaces.turned(taken.points(), 1.2))), shares(taken));
  }

  private static void same(Shares one, Shares other) {
    assertThat(one.entries()).hasSameSizeAs(other.entries());
    for (int i = 0; i < one.entries().size(); i++) {
      Figure.Estimate a = one.entries().get(i).share().estimate().orElseThrow();
      Figure.Estimate b = other.entries().get(i).share().estimate().orElseThrow();
      assertThat(a.value()).isCloseTo(b.value(), within(1e-9));
      assertThat(a.interval().low()).isCloseTo(b.interval().low(), within(1e-9));
      assertThat(a.interval().high()).isCloseTo(b.interval().high(), within(1e-9));
    }
  }

  /** Half the force for the same readings: all is twice as soft, the shank too. */
  @Test
  void twiceAsSoftHasTheSameShares() {
    LoadReadings taken = made(3);
    List<Point> half =
        taken.points().stream()
            .map(
                p ->
                    new Point(
                        p.load() / 2,
                        p.reading(),
                        p.place(),
                        p.at(),
                        p.direction(),
                        p.dial(),
                        p.branch(),
                        p.zeroed(),
                        p.line()))
            .toList();
    LoadReadings r = with(taken, half);
    LoadReadings soft = PushedRow.halfAsStiff(r);
    Shares one = shares(taken);
    Shares other = shares(soft);
    same(other, one);
    for (int i = 0; i < one.entries().size(); i++) {
      Figure twice = other.entries().get(i).compliance();
      assertThat(twice.value())
          .isCloseTo(
              2 * one.entries().get(i).compliance().value(), Percentage.withPercentage(1e-6));
    }
  }

  @Test
  void theGuiltyJointIsNamed() {
    for (int joint = 0; joint < 4; joint++) {
      TakenRow row = PushedRow.guilty(Stream.of(9, "guilty" + joint), joint);
      Shares found = shares(row.readings("row"));
      String name = List.of("collet", "bearings", "mount", "frame").get(joint);
      assertThat(found.sayings().get(0).code()).isEqualTo("shares-most");
      assertThat(found.sayings().get(0).args().toString()).contains("text=" + name);
    }
  }

  @Test
  void intervalsHoldTheTruth() {
    assertThat(SharesCoverage.of(40, 2, PushedRow.TWICE).least()).isGreaterThanOrEqualTo(0.88);
    assertThat(SharesCoverage.of(40, 2, PushedRow.NUT_ONCE).least()).isGreaterThanOrEqualTo(0.88);
  }

  @ParameterizedTest
  @Tag("long")
  @ValueSource(doubles = {0.5, 2, 5})
  void intervalsHoldTheTruthOverManyTrials(double scatterUm) {
    for (List<TakenRow.Spot> spots :
        List.of(PushedRow.TWICE, PushedRow.NUT_ONCE, PushedRow.BOTH_ONCE)) {
      SharesCoverage found = SharesCoverage.of(1000, scatterUm, spots);
      System.out.println(found.line());
      assertThat(found.least()).isGreaterThanOrEqualTo(0.93);
    }
  }
}
