package rundlauf.cutting.chip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rundlauf.cutting.Conditions;
import rundlauf.cutting.Operation;
import rundlauf.cutting.Tool;
import rundlauf.cutting.ToolRunout;
import rundlauf.maths.Stream;

class ChipLawTest {
  private static final double FEED = 20e-6;

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
  void allTeethTogetherTakeTheFeedOfATurnAtEveryAngle(int seed) {
    Stream stream = Stream.of(seed, "chips");
    int teeth = 1 + stream.index(6);
    EdgeRadii radii = EdgeRadii.of(tool(teeth, 30), runout(stream));
    double[][] leads = radii.lookBack(3e-3 * stream.uniform());
    for (int i = 1; i < 200; i++) {
      double phi = Math.PI * i / 200;
      double sum = 0;
      for (double[] lead : leads) {
        double thickness = ChipArcs.thickness(FEED, lead, Math.sin(phi));
        // the stretches say the same as the formula, tooth by tooth
        assertThat(onArcs(ChipArcs.of(FEED, lead, 0, Math.PI), phi))
            .isCloseTo(thickness, within(1e-16));
        sum += thickness;
      }
      // source: W.A. Kline, R.E. DeVor 1983: what the teeth take together is N c sin φ
      assertThat(sum).isCloseTo(teeth * FEED * Math.sin(phi), within(1e-15));
    }
  }

  private static double onArcs(List<ChipArc> arcs, double phi) {
    return arcs.stream()
        .filter(arc -> arc.from() <= phi && phi < arc.to())
        .mapToDouble(arc -> arc.thickness(phi))
        .findFirst()
        .orElse(0);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
  void isWhatARecedingSurfaceGives(int seed) {
    Stream stream = Stream.of(seed, "recession");
    int teeth = 3 + stream.index(3);
    ToolRunout runout = new ToolRunout(2.5 * FEED * stream.uniform(), 6 * stream.uniform(), 0, 0);
    ChipLoads loads = ChipLoads.of(tool(teeth, 0), slot(1e-3), runout);
    double[] receded = receded(teeth, runout);
    // source: recomputed: a surface straight ahead that comes nearer by the feed and is set back by
    // each tooth in turn, from any start, until it repeats itself
    for (int k = 0; k < teeth; k++) {
      assertThat(loads.teeth().get(k).peak()).isCloseTo(receded[k], within(1e-13));
    }
  }

  @Test
  void fourTeethInTheirOrder() {
    ChipLoads loads =
        ChipLoads.of(tool(4, 0), slot(1e-3), new ToolRunout(0.6 * FEED, Math.toRadians(20), 0, 0));
    // source: recomputed: by hand, R_k − D/2 = 0.6 c cos(20° − 90°(k − 1)) = 0.563816, 0.205212,
    // −0.563816, −0.205212 c; h_1 = 1 + 0.769028, h_2 = 1 − 0.358604, h_3 = 1 − 0.769028,
    // h_4 = 1 + 0.358604 c
    List<Double> expected = List.of(1.769028, 0.641396, 0.230972, 1.358604);
    for (int k = 0; k < 4; k++) {
      assertThat(loads.teeth().get(k).peak() / FEED).isCloseTo(expected.get(k), within(1e-6));
    }
    assertThat(loads.teethCutting()).isEqualTo(4);
  }

  @Test
  void fourTeethOfWhichTwoCut() {
    ChipLoads loads = ChipLoads.of(tool(4, 0), slot(1e-3), new ToolRunout(1.2 * FEED, 0, 0, 0));
    // source: recomputed: by hand, R_k − D/2 = 1.2, 0, −1.2, 0 c; tooth 3 stands off (1 − 1.2 < 0),
    // tooth 2 too (1 − 1.2 < 0), tooth 4 meets what tooth 1 left three teeth ago (3 − 1.2), tooth 1
    // what tooth 4 left (1 + 1.2)
    assertThat(loads.teeth().stream().map(t -> Math.rint(1e6 * t.peak() / FEED) / 1e6))
        .isEqualTo(List.of(2.2, 0.0, 0.0, 1.8));
    assertThat(loads.teethCutting()).isEqualTo(2);
  }

  private static double[] receded(int teeth, ToolRunout runout) {
    double[] chips = new double[teeth];
    double surface = 0;
    for (int pass = 0; pass < 40 * teeth; pass++) {
      int k = pass % teeth;
      double edge = runout.eccentricity() * Math.cos(runout.firstTooth() - 2 * Math.PI * k / teeth);
      surface -= FEED;
      chips[k] = Math.max(0, edge - surface);
      surface = Math.max(surface, edge);
    }
    return chips;
  }

  @Test
  void turningTheHighSpotByATootTurnsTheTeeth() {
    ToolRunout runout = new ToolRunout(9e-6, 0.4, 0.3e-3, 1.1);
    double pitch = 2 * Math.PI / 3;
    ToolRunout turned = new ToolRunout(9e-6, 0.4 + pitch, 0.3e-3, 1.1 + pitch);
    ChipLoads one = ChipLoads.of(tool(3, 30), slot(2e-3), runout);
    ChipLoads other = ChipLoads.of(tool(3, 30), slot(2e-3), turned);
    for (int k = 0; k < 3; k++) {
      ChipLoads.Tooth before = one.teeth().get(k);
      ChipLoads.Tooth after = other.teeth().get((k + 1) % 3);
      assertThat(after.peak()).isCloseTo(before.peak(), within(1e-15));
      assertThat(after.share()).isCloseTo(before.share(), within(1e-12));
    }
    assertThat(other.effectiveDiameter()).isCloseTo(one.effectiveDiameter(), within(1e-15));
  }

  @Test
  void conventionalAndClimbTakeTheSameChips() {
    ToolRunout runout = new ToolRunout(9e-6, 0.4, 0.3e-3, 1.1);
    Conditions up = new Conditions(Operation.SIDE_UP, 200, FEED, 2e-3, 1e-3);
    Conditions down = new Conditions(Operation.SIDE_DOWN, 200, FEED, 2e-3, 1e-3);
    ChipLoads one = ChipLoads.of(tool(3, 30), up, runout);
    ChipLoads other = ChipLoads.of(tool(3, 30), down, runout);
    for (int k = 0; k < 3; k++) {
      assertThat(other.teeth().get(k).peak()).isCloseTo(one.teeth().get(k).peak(), within(1e-15));
      assertThat(other.teeth().get(k).share()).isCloseTo(one.teeth().get(k).share(), within(1e-12));
    }
  }

  @Test
  void thePeakOfAShallowSideCutIsAtItsEdge() {
    Conditions shallow = new Conditions(Operation.SIDE_DOWN, 200, FEED, 1e-3, 0.3e-3);
    ChipLoads loads = ChipLoads.of(tool(2, 30), shallow, ToolRunout.NONE);
    // source: recomputed: sin φ at the wall's far side is √(1 − (1 − 2a/D)²), a/D = 0.1
    assertThat(loads.teeth().get(0).peak()).isCloseTo(FEED * 0.6, within(1e-15));
    assertThat(loads.teeth().stream().mapToDouble(ChipLoads.Tooth::share).toArray())
        .containsExactly(0.5, 0.5);
  }

  @Test
  void theSlotIsAsWideAsTheFarthestEdge() {
    assertThat(ChipLoads.of(tool(2, 30), slot(2e-3), ToolRunout.NONE).effectiveDiameter())
        .isEqualTo(3e-3);
    // source: recomputed: one straight tooth 60° ahead of the high spot, offset e: D + 2 e cos 60°
    assertThat(
            ChipLoads.of(tool(1, 0), slot(2e-3), new ToolRunout(10e-6, Math.PI / 3, 0, 0))
                .effectiveDiameter())
        .isCloseTo(3.010e-3, within(1e-12));
    // source: recomputed: the edge reaches the high spot at z = 0.2 D / (2 tan 30°), within the cut
    assertThat(
            ChipLoads.of(tool(1, 30), slot(2e-3), new ToolRunout(10e-6, 0.2, 0, 0))
                .effectiveDiameter())
        .isCloseTo(3.020e-3, within(1e-12));
    // source: recomputed: an axis that leans toward a straight tooth by 1 µm/mm, 2 mm deep
    assertThat(
            ChipLoads.of(tool(1, 0), slot(2e-3), new ToolRunout(0, 0, 1e-3, 0)).effectiveDiameter())
        .isCloseTo(3.004e-3, within(1e-9));
  }

  @Test
  void sharesAreThoseOfManySlices() {
    ToolRunout runout = new ToolRunout(12e-6, 0.3, 1e-3, 2);
    Tool tool = tool(3, 30);
    Conditions cut = slot(3e-3);
    double[] areas = new double[3];
    EdgeRadii radii = EdgeRadii.of(tool, runout);
    for (int i = 0; i < 2000; i++) {
      double[][] leads = radii.lookBack(3e-3 * (i + 0.5) / 2000);
      for (int k = 0; k < 3; k++) {
        for (int j = 0; j < 400; j++) {
          areas[k] += ChipArcs.thickness(FEED, leads[k], Math.sin(Math.PI * (j + 0.5) / 400));
        }
      }
    }
    double total = Arrays.stream(areas).sum();
    // source: recomputed: 2000 slices of 400 angles
    for (int k = 0; k < 3; k++) {
      assertThat(ChipLoads.of(tool, cut, runout).teeth().get(k).share())
          .isCloseTo(areas[k] / total, within(1e-3));
    }
  }

  private static ToolRunout runout(Stream stream) {
    return new ToolRunout(
        3 * FEED * stream.uniform(), 6 * stream.uniform(), 2e-3 * stream.uniform(), 1.3);
  }

  private static Tool tool(int teeth, double helix) {
    return new Tool(3e-3, teeth, Math.toRadians(helix), 9e-3, 20e-3, 3e-3, 580e9);
  }

  private static Conditions slot(double depth) {
    return new Conditions(Operation.SLOT, 200, FEED, depth, 3e-3);
  }
}
