package rundlauf.cutting.deflection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rundlauf.cutting.Coefficients.LinearEdge;
import rundlauf.cutting.Conditions;
import rundlauf.cutting.Operation;
import rundlauf.cutting.Tool;
import rundlauf.cutting.ToolRunout;
import rundlauf.cutting.force.ForceTurn;
import rundlauf.cutting.force.ForceTurn.ToothLoad;
import rundlauf.maths.Samples;

/** Walls against a cut that is stepped through in time. */
class WallErrorLawTest {
  private static final LinearEdge ALLOY = new LinearEdge(631e6, 99e6, 0, 13e3, 10e3, 0);

  /** A 3 mm cutter standing out 20 mm in a setup of 0.8 N/µm across the feed. */
  private static MilledCut cut(
      Operation operation,
      double helix,
      int teeth,
      double ap,
      double ae,
      double runout,
      int slices) {
    Tool tool = new Tool(3e-3, teeth, Math.toRadians(helix), 9e-3, 20e-3, 3e-3, 580e9);
    Conditions conditions = new Conditions(operation, 300, 15e-6, ap * 1e-3, ae * 1e-3);
    var out = new ToolRunout(runout * 1e-6, 0.7, 2e-3 * Math.signum(runout), 2);
    return new MilledCut(tool, conditions, out, ALLOY, 2e-6, 1.25e-6, slices);
  }

  private static Flexibility flexibility(MilledCut c) {
    return new Flexibility(CutterBeam.of(c.tool()), c.setupX(), c.setupY());
  }

  private static WallError ours(MilledCut c) {
    return WallError.of(c.turn(360), c.tool(), c.conditions(), c.runout(), flexibility(c));
  }

  @ParameterizedTest
  @CsvSource({
    "SIDE_UP, 0, 2, 1, 1.5, 0",
    "SIDE_UP, 30, 2, 3, 0.6, 0",
    "SIDE_DOWN, 0, 2, 1, 1.5, 0",
    "SIDE_DOWN, 30, 2, 3, 0.6, 8",
    "SLOT, 30, 3, 2, 3, 5",
    "SIDE_UP, 30, 3, 3, 0.6, 8",
    "SIDE_UP, 30, 2, 0.05, 1.5, 0",
    "SIDE_DOWN, 10, 2, 0.1, 0.6, 8",
    "SLOT, -15, 3, 0.08, 3, 0"
  })
  void findsTheWallThatSteppingThroughTheCutLeaves(
      Operation operation, double helix, int teeth, double ap, double ae, double runout) {
    compare(cut(operation, helix, teeth, ap, ae, runout, 64), 0.06);
  }

  @Tag("long")
  @ParameterizedTest
  @CsvSource({
    "SIDE_UP, 0, 2, 1, 1.5, 0",
    "SIDE_UP, 30, 2, 3, 0.6, 0",
    "SIDE_UP, 30, 2, 6, 1.5, 0",
    "SIDE_UP, 45, 4, 6, 0.3, 0",
    "SIDE_UP, -30, 2, 3, 0.6, 0",
    "SIDE_UP, 30, 3, 3, 0.6, 8",
    "SIDE_DOWN, 0, 2, 1, 1.5, 0",
    "SIDE_DOWN, 30, 2, 3, 0.6, 0",
    "SIDE_DOWN, 30, 2, 6, 1.5, 0",
    "SIDE_DOWN, -30, 3, 4, 1, 0",
    "SIDE_DOWN, 30, 1, 3, 0.6, 0",
    "SIDE_DOWN, 30, 2, 3, 0.6, 8",
    "SLOT, 0, 2, 0.5, 3, 0",
    "SLOT, 30, 2, 1, 3, 0",
    "SLOT, 30, 3, 2, 3, 5",
    "SLOT, 30, 2, 1, 3, 20",
    "SLOT, 30, 2, 6, 3, 0"
  })
  void findsItInFineSteps(
      Operation operation, double helix, int teeth, double ap, double ae, double runout) {
    compare(cut(operation, helix, teeth, ap, ae, runout, 256), 0.035);
  }

  private static void compare(MilledCut c, double part) {
    double[][] stepped = c.walls(3600);
    WallError wall = ours(c);
    assertThat(wall.plusY().isPresent())
        .isEqualTo(c.conditions().operation() != Operation.SIDE_DOWN);
    assertThat(wall.minusY().isPresent())
        .isEqualTo(c.conditions().operation() != Operation.SIDE_UP);
    // source: recomputed: the cut stepped through in time, slice by slice, each slice's force
    // bending the cutter, and the surface that remains (MilledCut)
    wall.plusY().ifPresent(w -> sameWall(w, stepped[0], part));
    wall.minusY().ifPresent(w -> sameWall(w, stepped[1], part));
  }

  /** Every height within twice the part of the largest, which is within the part. */
  private static void sameWall(WallError.Wall wall, double[] stepped, double part) {
    double size = Arrays.stream(stepped).map(Math::abs).max().orElseThrow();
    assertThat(Math.abs(wall.largest())).isCloseTo(size, within(part * size));
    for (int j = 0; j < stepped.length; j++) {
      double place = (j + 0.5) / stepped.length * (wall.heights().size() - 1);
      int below = (int) place;
      double there =
          wall.errors().get(below)
              + (place - below) * (wall.errors().get(below + 1) - wall.errors().get(below));
      assertThat(there).as("slice " + j).isCloseTo(stepped[j], within(2 * part * size + 0.3e-6));
    }
  }

  /** Force across the wall of largest size over the stiffness at the tip, toward the wall. */
  private static double peakOverStiffness(MilledCut c) {
    Samples y = c.turn(360).y();
    double peak = y.max() > -y.min() ? y.max() : y.min();
    return peak * flexibility(c).tipY();
  }

  @Test
  void peakForceOverStiffnessIsWrongByFactors() {
    MilledCut c = cut(Operation.SLOT, 30, 2, 1, 3, 20, 64);
    double[][] stepped = c.walls(3600);
    WallError wall = ours(c);
    double plus = wall.plusY().orElseThrow().largest();
    // source: recomputed: the cut stepped through in time (MilledCut)
    assertThat(plus).isCloseTo(Arrays.stream(stepped[0]).min().orElseThrow(), within(0.7e-6));
    assertThat(-peakOverStiffness(c) / plus).isGreaterThan(5);
  }

  @ParameterizedTest
  @CsvSource({"0, 1", "30, 1"})
  void peakForceOverStiffnessIsWrongInSign(double helix, double ap) {
    MilledCut c = cut(Operation.SIDE_UP, helix, 2, ap, 1.5, 0, 64);
    double[] stepped = c.walls(3600)[0];
    double plus = ours(c).plusY().orElseThrow().largest();
    // source: recomputed: the cut stepped through in time (MilledCut)
    assertThat(plus).isCloseTo(Arrays.stream(stepped).max().orElseThrow(), within(1e-6));
    assertThat(plus).isGreaterThan(10e-6);
    assertThat(-peakOverStiffness(c)).isLessThan(-25e-6);
  }

  @Test
  void aRigidSetupLeavesTheRunoutOfTheFarthestTooth() {
    Tool tool = new Tool(6e-3, 3, 0.5, 15e-3, 30e-3, 6e-3, Double.POSITIVE_INFINITY);
    var conditions = new Conditions(Operation.SLOT, 200, 30e-6, 4e-3, 6e-3);
    var runout = new ToolRunout(7e-6, 0.4, 1e-3, 2);
    var c = new MilledCut(tool, conditions, runout, ALLOY, 0, 0, 32);
    WallError wall = ours(c);
    for (WallError.Wall w : new WallError.Wall[] {wall.plusY().get(), wall.minusY().get()}) {
      for (int i = 0; i < w.heights().size(); i++) {
        double farthest = Double.NEGATIVE_INFINITY;
        for (int k = 0; k < 3; k++) {
          double behind = 2 * Math.PI * k / 3 + w.heights().get(i) * tool.lag();
          double tilted = 1e-3 * w.heights().get(i) * Math.cos(2 - behind);
          farthest = Math.max(farthest, 7e-6 * Math.cos(0.4 - behind) + tilted);
        }
        assertThat(w.errors().get(i)).isCloseTo(-farthest, within(1e-15));
      }
    }
  }

  /** Tooth 2 stands out and passes unpushed; tooth 3 stands back and is pushed as it passes. */
  @Test
  void eachToothIsPushedByTheForceOfItsOwnPass() {
    Tool tool = new Tool(6e-3, 3, 0, 15e-3, 30e-3, 6e-3, Double.POSITIVE_INFINITY);
    var conditions = new Conditions(Operation.SIDE_UP, 200, 30e-6, 1e-3, 3e-3);
    var runout = new ToolRunout(10e-6, 2 * Math.PI / 3, 0, 0);
    Samples still = Samples.generate(360, i -> 0);
    Samples pushed = Samples.generate(360, i -> i > 200 && i < 280 ? 10 : 0);
    var teeth =
        List.of(new ToothLoad(1, 0, 0.3), new ToothLoad(2, 0, 0.4), new ToothLoad(3, 0, 0.3));
    var turn = new ForceTurn(still, pushed, Samples.of(), still, teeth, still, still);
    var flexibility = new Flexibility(CutterBeam.of(tool), 0, 1e-6);
    WallError wall = WallError.of(turn, tool, conditions, runout, flexibility);
    // tooth 2: 10 um out; tooth 3: 5 um back and pushed by 10 um
    assertThat(wall.plusY().orElseThrow().largest()).isCloseTo(-10e-6, within(1e-15));
  }

  @Test
  void twiceAsStiffHalvesTheErrorOfATrueCutter() {
    MilledCut c = cut(Operation.SIDE_DOWN, 30, 2, 3, 0.6, 0, 32);
    var turn = c.turn(360);
    Tool stiff = new Tool(3e-3, 2, c.tool().helix(), 9e-3, 20e-3, 3e-3, 2 * 580e9);
    WallError soft = WallError.of(turn, c.tool(), c.conditions(), c.runout(), flexibility(c));
    WallError hard =
        WallError.of(
            turn,
            stiff,
            c.conditions(),
            c.runout(),
            new Flexibility(CutterBeam.of(stiff), 1e-6, 0.625e-6));
    // what is left of the difference: the farthest point lies up to s²/(2R) beyond the pass
    assertThat(hard.largest()).isCloseTo(soft.largest() / 2, within(0.3e-6));
    WallError ofTip =
        WallError.of(
            turn,
            c.tool(),
            c.conditions(),
            c.runout(),
            flexibility(c).tipX(),
            flexibility(c).tipY());
    assertThat(ofTip.largest()).isCloseTo(soft.largest(), within(1e-15));
  }

  @Test
  void teethThatNeverCutLeaveNothing() {
    MilledCut c = cut(Operation.SIDE_DOWN, 0, 2, 1, 0.6, 40, 8);
    assertThat(c.turn(90).teeth().get(1).share()).isZero();
    WallError wall = ours(c);
    double alone = wall.minusY().orElseThrow().errors().get(0);
    MilledCut one =
        new MilledCut(
            new Tool(3e-3, 1, 0, 9e-3, 20e-3, 3e-3, 580e9),
            new Conditions(Operation.SIDE_DOWN, 300, 30e-6, 1e-3, 0.6e-3),
            c.runout(),
            ALLOY,
            2e-6,
            1.25e-6,
            8);
    assertThat(alone).isCloseTo(ours(one).minusY().orElseThrow().errors().get(0), within(1e-12));
    // source: recomputed: one tooth of two marks at twice the feed: (2 c)^2 / (8 R)
    assertThat(wall.minusY().orElseThrow().cusp()).isCloseTo(9e-10 / (8 * 1.5e-3), within(1e-12));
  }

  @Test
  void fewAnglesAreRefused() {
    MilledCut c = cut(Operation.SIDE_DOWN, 30, 2, 1, 0.6, 0, 8);
    assertThatThrownBy(
            () -> WallError.of(c.turn(36), c.tool(), c.conditions(), c.runout(), flexibility(c)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("36 angles are fewer than 72 in a turn");
  }

  @Test
  void theLargerOfBothWallsIsTold() {
    var small = new WallError.Wall(1e-6, 0, Samples.of(), Samples.of(), 0);
    var large = new WallError.Wall(-2e-6, 0, Samples.of(), Samples.of(), 0);
    assertThat(new WallError(Optional.of(small), Optional.of(large)).largest()).isEqualTo(-2e-6);
    assertThat(new WallError(Optional.of(large), Optional.of(small)).largest()).isEqualTo(-2e-6);
    assertThat(new WallError(Optional.of(small), Optional.empty()).largest()).isEqualTo(1e-6);
  }
}
