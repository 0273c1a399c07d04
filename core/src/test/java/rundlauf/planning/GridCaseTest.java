package rundlauf.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rundlauf.bench.Cut;
import rundlauf.bench.Cutter;
import rundlauf.bench.Job;
import rundlauf.bench.Typed;
import rundlauf.cutting.CutterInUse;
import rundlauf.cutting.Materials;
import rundlauf.cutting.Operation;
import rundlauf.cutting.prediction.Allowed;
import rundlauf.maths.Samples;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;

/** The cuts that are tried, by hand. */
class GridCaseTest {
  private static final double HAIR = 1e-12;

  private static JobTask task(Feature feature, OptionalDouble width, OptionalDouble tolerance) {
    return new JobTask(
        Job.of("job.yaml", Typed.fields("name", "made")),
        feature,
        Materials.named("aluminium 6061-T6").orElseThrow(),
        1.2e-3,
        width,
        OptionalDouble.of(0.05),
        tolerance,
        Allowed.ANYTHING);
  }

  private static JobTask task(Feature feature, double width) {
    return task(feature, OptionalDouble.of(width), OptionalDouble.empty());
  }

  private static CutterInUse cutter(double edgeRadius) {
    return new CutterInUse(
        "made",
        Optional.of("end-mill"),
        mm(3),
        2,
        Quantity.exact(0.5, Unit.DEGREE),
        mm(9),
        mm(20),
        mm(3),
        Quantity.exact(580e9, Unit.GIGAPASCAL),
        Optional.empty(),
        Optional.of(Quantity.exact(edgeRadius, Unit.MICROMETRE)),
        Optional.empty());
  }

  private static Quantity mm(double length) {
    return Quantity.exact(length * 1e-3, Unit.MILLIMETRE);
  }

  @Test
  void aSlotAsWideAsTheCutterWithinAHairIsOnePass() {
    assertThat(Way.of(task(Feature.SLOT, 3.02e-3), 3e-3))
        .containsExactly(new Way(Operation.SLOT, 3e-3, 1));
    assertThat(Way.of(task(Feature.SLOT, 3.2e-3), 3e-3).size()).isGreaterThan(1);
  }

  @Test
  void aPocketIsTakenInEqualPassesThatFillItsWidth() {
    double width = 20e-3;
    for (Way way : Way.of(task(Feature.POCKET, width), 3e-3)) {
      assertThat(way.radial()).isLessThanOrEqualTo(3e-3 * (1 + 1e-9));
      double filled = 3e-3 + (way.wide() - 1) * way.radial();
      if (way.operation() == Operation.SLOT) {
        assertThat(filled).isGreaterThanOrEqualTo(width); // the last one overlaps
      } else {
        assertThat(filled).isCloseTo(width, within(HAIR));
      }
    }
  }

  @Test
  void aProfileTakesTheStockBesideItOrElseTheFullWidth() {
    assertThat(Way.of(task(Feature.PROFILE, 0.3e-3), 3e-3))
        .containsExactly(
            new Way(Operation.SIDE_DOWN, 0.3e-3, 1), new Way(Operation.SIDE_UP, 0.3e-3, 1));
    assertThat(Way.of(task(Feature.PROFILE, OptionalDouble.empty(), OptionalDouble.empty()), 3e-3))
        .containsExactly(new Way(Operation.SLOT, 3e-3, 1));
  }

  @Test
  void valuesRiseEvenlyInTheLogarithmWithThreeDigitsNeverPastTheEnds() {
    Samples speeds = Spacing.between(8000 / 60.0, 24000 / 60.0, 6, Unit.RPM);
    // source: recomputed: 8000 · 3^(i/5), three digits kept
    double[] rpm = {8000, 9960, 12400, 15400, 19200, 24000};
    assertThat(speeds.size()).isEqualTo(rpm.length);
    for (int i = 0; i < rpm.length; i++) {
      assertThat(Unit.RPM.fromSi(speeds.get(i))).isCloseTo(rpm[i], within(1e-6));
    }
    assertThat(Spacing.between(9, 8, 6, Unit.RPM)).isEqualTo(Samples.generate(1, i -> 8.0));
  }

  @Test
  void feedsGoFromTheChipThatRubsToTheThickestAdvised() {
    ChipWindow window = new ChipWindow(2e-6, 20e-6);
    Samples slot = window.feeds(new Way(Operation.SLOT, 3e-3, 1), cutter(3e-6));
    assertThat(slot.get(slot.size() - 1)).isCloseTo(20e-6, within(HAIR));
    assertThat(slot.get(0)).isCloseTo(1e-6, within(HAIR)); // one of two teeth may cut alone
    Samples side = window.feeds(new Way(Operation.SIDE_DOWN, 0.3e-3, 5), cutter(3e-6));
    // source: recomputed: thickest chip c · sin(arccos(1 − 2a/D)) = 0.6 c at a = D/10
    assertThat(side.get(side.size() - 1) * 0.6).isCloseTo(20e-6, within(0.1e-6));
  }

  @Test
  void theQuickestComesFirstAndTakesTheTimeOfItsPasses() {
    Grid grid = Grid.of(task(Feature.SLOT, 3e-3), cutter(3e-6), 133, 400);
    List<GridCut> all = grid.quickestFirst();
    GridCut quickest = all.get(0);
    double feed = ((Cut.FeedPerTooth) quickest.cut().feed()).length().si();
    assertThat(quickest.passes()).isEqualTo(new SetupPlan.Passes(1, 1));
    assertThat(quickest.seconds())
        .isCloseTo(1 / (2 * feed * quickest.cut().speed().si()), within(1e-9));
    for (GridCut cut : all) {
      assertThat(cut.seconds()).isGreaterThanOrEqualTo(quickest.seconds());
      assertThat(cut.cut().axial().si() * cut.passes().deep()).isCloseTo(1.2e-3, within(HAIR));
      assertThat(grid.heavier(cut))
          .allSatisfy(h -> assertThat(h.seconds()).isLessThan(cut.seconds()));
    }
  }

  @Test
  void aGrooveIsAsWideAsItsDepthMakesIt() {
    Cutter tool = MadeJob.pointed();
    CutterInUse whole = CutterInUse.of(tool, Optional.of(mm(18)), Place.NOWHERE);
    double depth = 0.3e-3;
    // source: recomputed: tip + 2 d tan(30°), d half of 0.3 mm
    assertThat(Groove.asEndMill(whole, tool, depth).diameter().si())
        .isCloseTo(0.1e-3 + 0.3e-3 * Math.tan(Math.PI / 6), within(HAIR));

    // source: recomputed: 0.1 + 2 · 1.2 · tan 30° = 1.4856 mm, and 10 µm of runout on either side
    assertThat(Groove.offWidth(engraved(1.5e-3, 0.05e-3), tool, 10e-6)).isEmpty();
    Saying off = Groove.offWidth(engraved(1.6e-3, 0.05e-3), tool, 10e-6).orElseThrow();
    assertThat(off.code()).isEqualTo("groove-off-width");
    double wanted = ((Arg.Amount) off.args().get(2)).si();
    assertThat(Groove.offWidth(engraved(1.6e-3, 1e-9), tool, 10e-6)).isPresent();
    assertThat(0.12e-3 + 2 * wanted * Math.tan(Math.PI / 6)).isCloseTo(1.6e-3, within(HAIR));
    assertThat(Groove.offWidth(engraved(0.11e-3, 0.05e-3), tool, 10e-6).orElseThrow().code())
        .isEqualTo("groove-too-wide-at-any-depth");
  }

  private static JobTask engraved(double width, double tolerance) {
    return task(Feature.ENGRAVE, OptionalDouble.of(width), OptionalDouble.of(tolerance));
  }
}
