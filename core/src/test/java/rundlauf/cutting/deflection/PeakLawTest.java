package rundlauf.cutting.deflection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rundlauf.CaseTable;
import rundlauf.cutting.Coefficients.LinearEdge;
import rundlauf.cutting.Conditions;
import rundlauf.cutting.Operation;
import rundlauf.cutting.Tool;
import rundlauf.cutting.ToolRunout;
import rundlauf.cutting.force.ForceTurn;
import rundlauf.maths.Samples;

/** Largest deflection and stress of a turn, and the static limit of a cut at a known mode. */
class PeakLawTest {
  private static final Tool TOOL = new Tool(3e-3, 2, 0.5, 9e-3, 20e-3, 6e-3, 580e9);

  private static MilledCut cut(Tool tool, Operation operation, double ap, double ae) {
    var k = new LinearEdge(631e6, 99e6, 0, 13e3, 10e3, 0);
    var conditions = new Conditions(operation, 300, 15e-6, ap, ae);
    return new MilledCut(tool, conditions, ToolRunout.NONE, k, 0.5e-6, 2e-6, 64);
  }

  @ParameterizedTest
  @CsvSource({"SLOT, 1, 3", "SIDE_UP, 6, 1", "SIDE_DOWN, 6, 1", "SIDE_UP, 3, 0.3"})
  void momentAndDeflectionAreThoseOfTheForcesAlongTheEdges(
      Operation operation, double ap, double ae) {
    MilledCut c = cut(TOOL, operation, ap * 1e-3, ae * 1e-3);
    CutterBeam beam = CutterBeam.of(TOOL);
    double root = 0;
    double nut = 0;
    double bent = 0;
    double both = 0;
    for (int i = 0; i < 360; i++) {
      double[][] f = c.along(2 * Math.PI * i / 360);
      root = Math.max(root, Math.hypot(moment(f[0], c, 9e-3), moment(f[1], c, 9e-3)));
      nut = Math.max(nut, Math.hypot(moment(f[0], c, 20e-3), moment(f[1], c, 20e-3)));
      double x = bent(f[0], c, beam);
      double y = bent(f[1], c, beam);
      bent = Math.max(bent, Math.hypot(x, y));
      double setupX = 0.5e-6 * Samples.of(f[0]).sum();
      double setupY = 2e-6 * Samples.of(f[1]).sum();
      both = Math.max(both, Math.hypot(x + setupX, y + setupY));
    }
    ForceTurn turn = c.turn(360);
    CutterStress stress = CutterStress.of(turn, TOOL, c.conditions());
    // source: recomputed: moments and deflections summed over 64 slices of the edges
    assertThat(stress.fluteRoot())
        .isCloseTo(beam.stressAtFluteRoot(root), within(0.02 * stress.fluteRoot()));
    assertThat(stress.nut()).isCloseTo(beam.stressAtNut(nut), within(0.02 * stress.nut()));
    assertThat(stress.peak()).isEqualTo(stress.fluteRoot());
    var flexibility = new Flexibility(beam, 0.5e-6, 2e-6);
    TipDeflection tip = TipDeflection.of(turn, TOOL, c.conditions(), flexibility);
    assertThat(tip.cutter()).isCloseTo(bent, within(0.02 * bent));
    assertThat(tip.together()).isCloseTo(both, within(0.02 * both));
    assertThat(tip.together()).isLessThanOrEqualTo(tip.cutter() + tip.setup());
    assertThat(tip.setup()).isCloseTo(largestShift(turn), within(1e-15));
    WallError walls = WallError.of(turn, TOOL, c.conditions(), c.runout(), flexibility);
    assertThat(CutDeflection.of(turn, TOOL, c.conditions(), c.runout(), flexibility))
        .isEqualTo(new CutDeflection(tip, stress, walls));
  }

  private static double largestShift(ForceTurn turn) {
    return Samples.generate(360, i -> Math.hypot(0.5e-6 * turn.x().get(i), 2e-6 * turn.y().get(i)))
        .max();
  }

  private static double moment(double[] forces, MilledCut c, double height) {
    double sum = 0;
    for (int j = 0; j < forces.length; j++) {
      sum += forces[j] * (height - c.height(j));
    }
    return sum;
  }

  private static double bent(double[] forces, MilledCut c, CutterBeam beam) {
    double sum = 0;
    for (int j = 0; j < forces.length; j++) {
      sum += forces[j] * beam.compliance(c.height(j), 0);
    }
    return sum;
  }

  @Test
  void aForceAtMidHeightIsSharedInHalves() {
    Tool straight = new Tool(3e-3, 1, 0, 9e-3, 20e-3, 3e-3, 580e9);
    var conditions = new Conditions(Operation.SIDE_DOWN, 300, 15e-6, 2e-3, 1e-3);
    Samples force = Samples.generate(360, i -> i == 160 ? 10 : 0);
    Samples none = Samples.generate(360, i -> 0);
    List<ForceTurn.ToothLoad> teeth = List.of(new ForceTurn.ToothLoad(1, 15e-6, 1));
    var turn = new ForceTurn(none, force, none, none, teeth, none, none);
    PairedLoads loads = PairedLoads.of(turn, straight, conditions);
    assertThat(loads.lowY().get(160)).isCloseTo(5, within(1e-12));
    assertThat(loads.highY().get(160)).isCloseTo(5, within(1e-12));
    // source: from memory: Gauss-Legendre nodes of two points, 0.5 -+ 1 / (2 sqrt 3) of the
    // interval
    assertThat(loads.low()).isCloseTo(0.2113248654e-3 * 2, within(1e-12));
    assertThat(loads.high()).isCloseTo(0.7886751346e-3 * 2, within(1e-12));
  }

  @Test
  void slowlyTurnedTheWallOfAKnownModeIsWhereItWasMeantToBe() {
    CaseTable table = CaseTable.read("cutting/sle_1dof");
    double k = 1_340_049.648;
    Tool rigid = new Tool(10e-3, 2, 0, 10e-3, 20e-3, 10e-3, Double.POSITIVE_INFINITY);
    var cut =
        new MilledCut(
            rigid,
            new Conditions(Operation.SIDE_UP, 5000 / 60.0, 0.1e-3, 0.1e-3, 5e-3),
            ToolRunout.NONE,
            new LinearEdge(6e8, 2e8, 0, 0, 0, 0),
            0,
            1 / k,
            8);
    var flexibility = new Flexibility(CutterBeam.of(rigid), 0, 1 / k);
    WallError wall =
        WallError.of(cut.turn(360), rigid, cut.conditions(), cut.runout(), flexibility);
    // source: recomputed: surface location error of a mode at 922 Hz (Schmitz and Mann 2006), the
    // slowest row: y is -0.088 um at 5000 rpm, of a peak force over stiffness of 4.5 um
    assertThat(table.number(0, "SLE_um")).isBetween(-0.1, 0.0);
    double largest = wall.plusY().orElseThrow().largest() * 1e6;
    assertThat(largest).isCloseTo(-table.number(0, "SLE_um"), within(0.1));
    assertThat(cut.turn(360).y().max() / k * 1e6).isGreaterThan(4.4);
  }
}
