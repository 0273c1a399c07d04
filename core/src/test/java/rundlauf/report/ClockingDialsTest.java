package rundlauf.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rundlauf.maths.Samples;
import rundlauf.maths.Stream;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Cause;
import rundlauf.quantity.DrawnVector;
import rundlauf.quantity.Measured;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.reduce.runout.BestClocking;
import rundlauf.reduce.runout.BestClocking.Marks;
import rundlauf.reduce.runout.BestClocking.Standing;
import rundlauf.report.ClockingDial.Arrow;
import rundlauf.report.ClockingDial.Part;

/** Lengths and angles of the dials against what a drawing by hand has. */
class ClockingDialsTest {
  private static final double UM = 1e-6;

  /** A vector of amplitude [µm] and high spot [deg], sure to within {@code sigma} [µm]. */
  private static DrawnVector vector(double um, double highSpot, double sigma) {
    Stream stream = Stream.of(3, um + " " + highSpot);
    double a = um * Math.cos(Math.toRadians(highSpot));
    double b = um * Math.sin(Math.toRadians(highSpot));
    return new DrawnVector(
        stream.gaussians(1000).map(x -> (a + sigma * x) * UM),
        stream.gaussians(1000).map(x -> (b + sigma * x) * UM),
        new LinkedHashMap<>());
  }

  private static BestClocking best(double sigma) {
    // Collet's clock 90: its high spot goes from 180 to 90. Shank's 270: from 90 to 180.
    List<Standing> standings =
        List.of(
            new Standing("spindle", vector(30, 0, sigma), vector(30, 0, sigma)),
            new Standing("collet", vector(10, 180, sigma), vector(10, 90, sigma)),
            new Standing("shank", vector(15, 90, sigma), vector(15, 180, sigma)));
    return new BestClocking(
        OptionalDouble.of(0.01),
        OptionalDouble.of(Math.toRadians(90)),
        OptionalDouble.of(Math.toRadians(270)),
        Measured.exact(36 * UM, Unit.MICROMETRE)
            .with(Cause.normal("t", "clamping-assumed"), 4 * UM),
        Measured.exact(50 * UM, Unit.MICROMETRE),
        new Marks(OptionalDouble.of(0), OptionalDouble.of(0)),
        standings);
  }

  private static ClockingDial dial(int number, String rotation) {
    return (ClockingDial) ClockingDials.of(TrialSheet.turning(rotation), best(0.01)).get(number);
  }

  private static void points(Arrow arrow, double um, double forward) {
    assertThat(arrow.length()).isCloseTo(um * UM, within(0.02 * UM));
    assertThat(Math.toDegrees(arrow.angle())).isCloseTo(forward, within(0.1));
  }

  // source: by hand: a point that reads highest at angle φ stands φ behind the mark
  @Test
  void whatReadsHighestAtAnAngleStandsThatFarBehindTheMark() {
    List<Arrow> arrows = dial(0, "cw").arrows();
    points(arrows.get(1), 10, 180);
    points(arrows.get(2), 15, 270);
    assertThat(arrows).extracting(a -> a.name().args().get(0)).startsWith(Arg.of("spindle"));
  }

  // source: by hand: a mark turned forward by its clock angle takes the part's place with it
  @Test
  void aPartTurnedForwardStandsThatMuchFurtherForward() {
    List<Arrow> arrows = dial(1, "cw").arrows();
    points(arrows.get(1), 10, 180 + 90);
    points(arrows.get(2), 15, (270 + 270) % 360);
  }

  // source: by hand: 30 − 10 along and 15 across make 25 at atan2(15, 20) = 36.87°
  @Test
  void togetherIsTheSumOfTheParts() {
    points(dial(0, "cw").together(), 25, 360 - 36.87);
    points(dial(1, "cw").together(), Math.hypot(15, 10), 360 - Math.toDegrees(Math.atan2(10, 15)));
  }

  // source: by hand: half the upper end 36 + 1.96 · 4 of the TIR's interval
  @Test
  void theNextClampingStaysWithinHalfTheUpperEndOfItsTir() {
    assertThat(dial(1, "cw").within()).isCloseTo(21.92 * UM, within(0.01 * UM));
    assertThat(dial(0, "cw").span()).isEqualTo(dial(1, "cw").span());
  }

  @Test
  void marksStandWhereTheyAreSetAndForwardIsDrawnAsTheSpindleRuns() {
    ClockingDial set = dial(1, "cw");
    assertThat(set.marks()).extracting(ClockingDial.Mark::part).containsExactly(Part.values());
    assertThat(set.marks().stream().mapToDouble(m -> Math.toDegrees(m.angle())).toArray())
        .containsExactly(new double[] {0, 90, 270}, within(1e-9));
    assertThat(set.clockwise()).isFalse();
    assertThat(dial(1, "").clockwise()).isFalse();
    assertThat(dial(1, "ccw").clockwise()).isTrue();
  }

  @Test
  void theTableSaysTheSame() {
    ClockingDial set = dial(1, "cw");
    List<Cell> shank = set.twin().rows().get(5).cells();
    assertThat(shank.get(1)).isEqualTo(new Cell.Number(set.arrows().get(2).length(), set.length()));
    assertThat(shank.get(2)).isEqualTo(new Cell.Number(set.arrows().get(2).angle(), set.angle()));
    assertThat(set.twin().rows().get(2).cells().get(2))
        .isEqualTo(new Cell.Number(Math.toRadians(270), set.angle()));
  }

  @Test
  void aDirectionThatTheReadingsDoNotTellIsNotTold() {
    ClockingDial dial = (ClockingDial) ClockingDials.of(TrialSheet.turning("cw"), best(20)).get(0);
    assertThat(dial.arrows().get(1).told()).isFalse();
    assertThat(dial.twin().rows().get(4).cells().get(2))
        .isEqualTo(new Cell.Said(Saying.of("report-direction-not-told", "")));
  }

  @Test
  void nothingIsDrawnOfAClockingThatIsNotKnown() {
    var none = new Missing(Unit.MICROMETRE, Saying.of("parts-not-told-apart", "bestClocking"));
    OptionalDouble no = OptionalDouble.empty();
    var unknown = new BestClocking(no, no, no, none, none);
    assertThat(ClockingDials.of(TrialSheet.turning("cw"), unknown)).isEmpty();
    assertThat(ClockingCard.of(TrialSheet.turning("cw"), unknown)).isEmpty();
  }

  @Test
  void theCardSaysWhatToSetAndWhatIsAssumed() {
    Card card = (Card) ClockingCard.of(TrialSheet.turning("ccw"), best(0.01)).orElseThrow();
    assertThat(card.lines()).extracting(l -> l.label().code()).contains("report-card-collet");
    assertThat(card.lines().get(2).value())
        .isEqualTo(new Cell.Number(Math.toRadians(90), new Scale(Unit.DEGREE, 0)));
    assertThat(card.notes())
        .extracting(Saying::code)
        .containsExactly(
            "report-card-clockwise", "report-card-scatter-assumed", "report-card-check");
    Card unsaid = (Card) ClockingCard.of(TrialSheet.turning(""), best(0.01)).orElseThrow();
    assertThat(unsaid.notes().get(0).code()).isEqualTo("report-card-rotation-assumed");
  }

  // source: from memory: 95 % of a normal vector's draws lie within sqrt(5.991) standard deviations
  @Test
  void theRegionReachesAsFarAsANormalVectorsDoes() {
    Stream stream = Stream.of(5, "region");
    Samples x = stream.gaussians(40_000);
    Samples y = stream.gaussians(40_000);
    var tilted =
        new DrawnVector(
            x.map(v -> 7 + 3 * v),
            Samples.generate(x.size(), i -> -2 + 1.5 * x.get(i) + 2 * y.get(i)),
            new LinkedHashMap<>());
    DoubtRegion region = DoubtRegion.of(tilted);
    double reach = Math.sqrt(5.991);
    assertThat(region.a().max()).isCloseTo(7 + 3 * reach, within(0.1));
    assertThat(region.b().min()).isCloseTo(-2 - 2.5 * reach, within(0.1));
    double far = 7 + 3 * reach;
    int at = region.a().stream().boxed().toList().indexOf(region.a().max());
    assertThat(region.b().get(at)).isCloseTo(-2 + 1.5 * (far - 7) / 3, within(0.1));
  }
}
