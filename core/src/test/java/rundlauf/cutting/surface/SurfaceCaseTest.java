package rundlauf.cutting.surface;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rundlauf.CaseTable;
import rundlauf.bench.CutterMass;
import rundlauf.cutting.Materials;
import rundlauf.cutting.SmallestChip;
import rundlauf.cutting.Tool;
import rundlauf.cutting.force.ForceTurn;
import rundlauf.cutting.force.ForceTurn.ToothLoad;
import rundlauf.maths.Samples;
import rundlauf.maths.Stream;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;

class SurfaceCaseTest {
  private static final CaseTable MARKS = CaseTable.read("cutting/feed_marks");

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3, 4, 5, 6})
  void twoTeethOfUnlikeReach(int row) {
    double r = MARKS.number(row, "R_mm") / 1e3;
    double c = MARKS.number(row, "fz_mm") / 1e3;
    double apart = MARKS.number(row, "Dr_mm") / 1e3;
    // source: recomputed: envelope of circular arcs, cases/cutting/feed_marks.csv, within 4e-4
    double printed = MARKS.number(row, "PV_envelope_um");
    for (Samples reaches : List.of(Samples.of(apart, 0), Samples.of(5e-6, 5e-6 + apart))) {
      assertThat(FeedMarks.height(r, c, reaches) * 1e6)
          .isCloseTo(printed, within(5e-4 * printed + 1e-5));
      assertThat(FeedMarks.height(r, c, reaches) * 1e6)
          .isCloseTo(MARKS.number(row, "PV_formula_um"), within(1e-5));
    }
  }

  @Test
  void equalTeethLeaveTheTextbooksCusp() {
    for (int teeth = 1; teeth <= 6; teeth++) {
      Samples even = Samples.generate(teeth, i -> 1e-6);
      // source: a tool maker's page: fz^2 / (4 D)
      assertThat(FeedMarks.height(3e-3, 50e-6, even))
          .isCloseTo(50e-6 * 50e-6 / (4 * 6e-3), within(1e-15));
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
  void manyTeethLeaveTheEnvelopeOfTheirArcs(int seed) {
    Stream stream = Stream.of(seed, "teeth");
    int teeth = 3 + stream.index(4);
    double r = 2e-3;
    double c = 40e-6;
    Samples reaches = Samples.generate(teeth, i -> 0.6e-6 * stream.uniform());
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < 20_000; i++) {
      double x = teeth * c * i / 20_000;
      double y = Double.NEGATIVE_INFINITY;
      for (int k = -teeth; k < 2 * teeth; k++) {
        double off = x - k * c;
        double arc = reaches.get(Math.floorMod(k, teeth)) - r + Math.sqrt(r * r - off * off);
        y = Math.max(y, arc);
      }
      low = Math.min(low, y);
      high = Math.max(high, y);
    }
    // source: recomputed: envelope of circular arcs at 20 000 places along the feed
    assertThat(FeedMarks.height(r, c, reaches)).isCloseTo(high - low, within(0.2e-9));
  }

  @Test
  void noToothIsRefused() {
    assertThatThrownBy(() -> FeedMarks.height(1e-3, 1e-5, Samples.of()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("no tooth leaves a mark");
  }

  @ParameterizedTest
  @CsvSource({
    "0.1, 30, 0.1, 0.153590, 0.535898",
    "0.1, 60, 0.1, 0.215470, 1.154701",
    "0.2, 90, 0.15, 0.500000, 2",
    "0.1, 20, 0.05, 0.117633, 0.352654"
  })
  void vGrooves(double tip, double angle, double depth, double width, double perDepth) {
    VTool tool = new VTool(tip * 1e-3, Math.toRadians(angle));
    // source: recomputed: tip + 2 d tan(angle/2), and by the flank's length
    assertThat(tool.grooveWidth(depth * 1e-3, 0) * 1e3).isCloseTo(width, within(5e-7));
    assertThat(tool.widthPerDepth()).isCloseTo(perDepth, within(5e-7));
    assertThat(tool.grooveWidth(depth * 1e-3, 20e-6) * 1e3).isCloseTo(width + 0.04, within(5e-7));
  }

  @Test
  void aVToolNeedsAnAngle() {
    assertThatThrownBy(() -> new VTool(1e-4, Math.PI)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new VTool(-1e-4, 1)).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void unbalanceGrowsWithTheSquareOfSpeed() {
    // source: recomputed: 10 g at 20 um and 24 000 rpm: 0.01 kg * 20e-6 m * (2513.274 rad/s)^2
    assertThat(Unbalance.force(0.01, 20e-6, 400)).isCloseTo(1.26331, within(1e-5));
    assertThat(Unbalance.force(0.01, 20e-6, 800)).isCloseTo(4 * 1.263309, within(1e-5));
    Tool tool = new Tool(3e-3, 2, 0, 10e-3, 20e-3, 3e-3, 580e9);
    // source: recomputed: 14 500 kg/m3 * pi/4 * (2.4^2 * 10 + 3^2 * 10) mm3
    assertThat(Unbalance.mass(tool, CutterMass.CARBIDE) * 1e3).isCloseTo(1.68091, within(1e-5));
  }

  private static ForceTurn turn(Samples z, ToothLoad... teeth) {
    Samples none = Samples.of();
    return new ForceTurn(none, none, z, none, List.of(teeth), none, none);
  }

  @Test
  void theLargestPullIsToldAndNoPushIs() {
    assertThat(PullOut.largest(turn(Samples.of(-2, 7.5, 3)))).isEqualTo(OptionalDouble.of(7.5));
    assertThat(PullOut.largest(turn(Samples.of(-2, -1)))).isEqualTo(OptionalDouble.of(0));
    assertThat(PullOut.largest(turn(Samples.of()))).isEmpty();
    assertThat(PullOut.notJudged(turn(Samples.of(-2, 7.5))))
        .contains(Saying.of("pull-not-judged", "pull-out", Arg.about(7.5, Unit.NEWTON)));
    assertThat(PullOut.notJudged(turn(Samples.of(-2, -1)))).isEmpty();
    assertThat(PullOut.notJudged(turn(Samples.of()))).isEmpty();
  }

  @Test
  void theThinnestWorkingChipIsThatOfATooth() {
    ForceTurn turn =
        turn(
            Samples.of(),
            new ToothLoad(1, 20e-6, 0.7),
            new ToothLoad(2, 6e-6, 0.3),
            new ToothLoad(3, 0, 0));
    assertThat(Rubbing.thinnestWorkingChip(turn)).isEqualTo(OptionalDouble.of(6e-6));
    assertThat(Rubbing.thinnestWorkingChip(turn(Samples.of()))).isEmpty();
  }

  @Test
  void rubbingIsJudgedByThePublishedRange() {
    // source: X. Cheng et al., Int. J. Adv. Manuf. Technol. 97 (2018) 3119-3128, abstract: 0.14 to
    // 0.43 of the edge radius in various materials, 0.6 to 0.68 in brass C26000
    assertThat(Rubbing.of(0.41e-6, 3e-6, SmallestChip.USUAL)).isEqualTo(Rubbing.RUBS);
    assertThat(Rubbing.of(0.43e-6, 3e-6, SmallestChip.USUAL)).isEqualTo(Rubbing.MAY_RUB);
    assertThat(Rubbing.of(1.28e-6, 3e-6, SmallestChip.USUAL)).isEqualTo(Rubbing.MAY_RUB);
    assertThat(Rubbing.of(1.30e-6, 3e-6, SmallestChip.USUAL)).isEqualTo(Rubbing.CUTS);
    assertThat(Rubbing.said(0.3e-6, 3e-6, SmallestChip.USUAL).map(Saying::code))
        .contains("edge-rubs");
    assertThat(Rubbing.said(1e-6, 3e-6, SmallestChip.USUAL).orElseThrow().args())
        .containsExactly(
            Arg.of(1e-6, Unit.MICROMETRE),
            Arg.of(3e-6, Unit.MICROMETRE),
            Arg.of(0.14 * 3e-6, Unit.MICROMETRE),
            Arg.of(0.43 * 3e-6, Unit.MICROMETRE));
    assertThat(Rubbing.said(2e-6, 3e-6, SmallestChip.USUAL)).isEmpty();
    SmallestChip brass = Materials.named("brass").orElseThrow().smallestChip();
    assertThat(Rubbing.of(1.7e-6, 3e-6, brass)).isEqualTo(Rubbing.RUBS);
    assertThat(Rubbing.of(2.1e-6, 3e-6, brass)).isEqualTo(Rubbing.CUTS);
    // source: from memory: Liu, DeVor, Kapoor (2006): steel 1018 0.2 to 0.35, Al6082 0.35 to 0.40
    SmallestChip steel = Materials.named("mild steel").orElseThrow().smallestChip();
    assertThat(List.of(steel.low(), steel.high())).containsExactly(0.2, 0.35);
    SmallestChip alloy = Materials.named("aluminium 6082-T6").orElseThrow().smallestChip();
    assertThat(List.of(alloy.low(), alloy.high())).containsExactly(0.35, 0.40);
  }
}
