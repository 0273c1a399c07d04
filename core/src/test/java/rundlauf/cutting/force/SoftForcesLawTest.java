package rundlauf.cutting.force;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import rundlauf.cutting.Coefficients;
import rundlauf.cutting.Coefficients.LinearEdge;
import rundlauf.cutting.Conditions;
import rundlauf.cutting.Operation;
import rundlauf.cutting.Tool;
import rundlauf.cutting.ToolRunout;
import rundlauf.maths.Samples;

class SoftForcesLawTest {
  /** Invented, of the size of aluminium. */
  private static final LinearEdge INVENTED = new LinearEdge(800e6, 200e6, 100e6, 10e3, 12e3, 1e3);

  private static final LinearEdge NO_EDGE = new LinearEdge(800e6, 200e6, 100e6, 0, 0, 0);

  @ParameterizedTest
  @CsvSource({
    // teeth, helix deg, operation, depth mm, stiffness x and y N/um, eccentricity um
    "2, 30, SLOT, 0.5, 0.5, 0.5, 6",
    "3, 20, SIDE_DOWN, 1.0, 0.8, 0.5, 6",
    "4, 30, SIDE_UP, 1.0, 0.6, 0.6, 10",
  })
  void isWhereAMarchedNoseComesToRest(
      int teeth, double helix, Operation operation, double depth, double x, double y, double e) {
    againstMarching(teeth, helix, operation, depth, x, y, e, 60);
  }

  @ParameterizedTest
  @Tag("long")
  @CsvSource({
    "2, 30, SLOT, 1.0, 0.3, 0.6, 15",
    "2, 30, SIDE_UP, 1.5, 0.4, 0.4, 6",
    "2, 30, SIDE_DOWN, 1.5, 0.4, 0.4, 6",
    "3, 30, SLOT, 0.5, 0.5, 0.5, 20",
    "2, 0, SLOT, 0.5, 0.5, 0.5, 6",
    "3, 0, SIDE_UP, 0.5, 0.5, 0.5, 20",
    "1, 30, SIDE_DOWN, 1.0, 0.5, 0.5, 20",
  })
  void isWhereAMarchedNoseComesToRestElsewhere(
      int teeth, double helix, Operation operation, double depth, double x, double y, double e) {
    againstMarching(teeth, helix, operation, depth, x, y, e, 200);
  }

  private static void againstMarching(
      int teeth,
      double helix,
      Operation operation,
      double depth,
      double x,
      double y,
      double e,
      int turns) {
    Tool tool = tool(teeth, helix);
    Conditions cut = cut(operation, depth);
    ToolRunout runout = new ToolRunout(1e-6 * e, 0.3, 0, 0);
    MarchedNose marched =
        new MarchedNose(tool, cut, runout, INVENTED, 360).turn(turns, 1e-6 / x, 1e-6 / y);
    ForceTurn soft = settled(SoftForces.over(tool, cut, runout, INVENTED, 1e-6 / x, 1e-6 / y, 360));
    // source: recomputed: marching with a kept surface, sharp edge force and creep to rest
    // straight teeth come in at one angle here, over a step of the angles there
    double share = helix == 0 ? 0.03 : 0.01;
    assertThat(apart(soft, marched)).isLessThan(share * largest(marched));
    for (int k = 0; k < teeth; k++) {
      assertThat(soft.teeth().get(k).peak()).isCloseTo(marched.peak[k], within(0.6e-6));
    }
    assertThat(soft.lateral().max())
        .isCloseTo(largestForce(marched), within(0.04 * largestForce(marched)));
  }

  /** Root mean square distance of the two tips. */
  private static double apart(ForceTurn soft, MarchedNose marched) {
    return Math.sqrt(
        Samples.generate(
                soft.x().size(),
                i ->
                    Math.pow(soft.tipX().get(i) - marched.tipX[i], 2)
                        + Math.pow(soft.tipY().get(i) - marched.tipY[i], 2))
            .mean());
  }

  private static double largest(MarchedNose marched) {
    return Samples.generate(360, i -> Math.hypot(marched.tipX[i], marched.tipY[i])).max();
  }

  private static double largestForce(MarchedNose marched) {
    return Samples.generate(360, i -> Math.hypot(marched.x[i], marched.y[i])).max();
  }

  @ParameterizedTest
  @CsvSource({"0, 27, 3", "1, 19, 11", "3, 16.714286, 13.285714"})
  void aSoftNoseEvensTheChipsOut(double ratio, double thick, double thin) {
    // 15 µm a tooth, 6 µm off axis, straight teeth; ratio = Krc · depth / stiffness
    double compliance = ratio / (200e6 * 1e-3);
    ForceTurn turn =
        settled(
            SoftForces.over(
                tool(2, 0),
                cut(Operation.SLOT, 1),
                new ToolRunout(6e-6, 0, 0, 0),
                INVENTED,
                compliance,
                compliance,
                360));
    // source: recomputed: by hand at φ = 90°, where only one edge cuts: h_1 + h_2 = 2 c and
    // h_1 − h_2 = 4 e − 2 ratio (h_1 − h_2), so h = c ± 2 e / (1 + 2 ratio)
    assertThat(1e6 * turn.teeth().get(0).peak()).isCloseTo(thick, within(0.01));
    assertThat(1e6 * turn.teeth().get(1).peak()).isCloseTo(thin, within(0.01));
  }

  @ParameterizedTest
  @EnumSource(Operation.class)
  void aStiffNoseIsARigidOne(Operation operation) {
    for (Coefficients k :
        List.of(INVENTED, new Coefficients.Kienzle(700e6, 0.25, 0.4, 0.2, true))) {
      ToolRunout runout = new ToolRunout(6e-6, 0.3, 0.2e-3, 1);
      ForceTurn rigid = RigidForces.over(tool(3, 30), cut(operation, 2), runout, k, 360);
      ForceTurn soft =
          settled(SoftForces.over(tool(3, 30), cut(operation, 2), runout, k, 1e-13, 1e-13, 360));
      double scale = rigid.lateral().max();
      assertThat(soft.lateral().max()).isCloseTo(scale, within(0.003 * scale));
      assertThat(far(soft.x(), rigid.x())).isLessThan(0.02 * scale);
      assertThat(far(soft.y(), rigid.y())).isLessThan(0.02 * scale);
      assertThat(far(soft.z(), rigid.z())).isLessThan(0.02 * scale);
      assertThat(far(soft.torque(), rigid.torque())).isLessThan(0.02 * scale * 1.5e-3);
      for (int t = 0; t < 3; t++) {
        assertThat(soft.teeth().get(t).peak())
            .isCloseTo(rigid.teeth().get(t).peak(), within(0.1e-6));
        assertThat(soft.teeth().get(t).share())
            .isCloseTo(rigid.teeth().get(t).share(), within(2e-3));
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Operation.class)
  void withoutEdgeForceTheMeanForceDoesNotDependOnTheNose(Operation operation) {
    ToolRunout runout = new ToolRunout(12e-6, 0.3, 0, 0);
    ForceTurn rigid = RigidForces.over(tool(3, 30), cut(operation, 1), runout, NO_EDGE, 360);
    ForceTurn soft =
        settled(SoftForces.over(tool(3, 30), cut(operation, 1), runout, NO_EDGE, 4e-6, 6e-6, 360));
    // source: recomputed: what is fed in a turn is cut in a turn, so chips add up to N c sin φ
    double scale = rigid.lateral().max();
    assertThat(soft.x().mean()).isCloseTo(rigid.x().mean(), within(0.004 * scale));
    assertThat(soft.y().mean()).isCloseTo(rigid.y().mean(), within(0.004 * scale));
    assertThat(soft.torque().mean())
        .isCloseTo(rigid.torque().mean(), within(0.004 * rigid.torque().max()));
    assertThat(soft.lateral().max()).isLessThan(0.9 * scale);
  }

  @Test
  void oneToothMeetsItsOwnTraceAndOnlyBends() {
    Conditions cut = cut(Operation.SIDE_UP, 1);
    ForceTurn rigid = RigidForces.over(tool(1, 30), cut, ToolRunout.NONE, INVENTED, 360);
    ForceTurn soft =
        settled(SoftForces.over(tool(1, 30), cut, ToolRunout.NONE, INVENTED, 2e-6, 3e-6, 360));
    double scale = rigid.lateral().max();
    assertThat(far(soft.x(), rigid.x())).isLessThan(0.02 * scale);
    assertThat(far(soft.tipX(), soft.x().map(f -> 2e-6 * f))).isLessThan(3e-9);
    assertThat(far(soft.tipY(), soft.y().map(f -> 3e-6 * f))).isLessThan(3e-9);
  }

  @Test
  void anglesAreTakenUpToAMultipleOfTheTeeth() {
    ForceTurn turn =
        settled(
            SoftForces.over(
                tool(7, 30), cut(Operation.SLOT, 0.3), ToolRunout.NONE, INVENTED, 1e-6, 1e-6, 180));
    assertThat(turn.x().size()).isEqualTo(182);
    assertThat(turn.tipY().size()).isEqualTo(182);
  }

  @Test
  void saysWhenItFindsNoRest() {
    LinearEdge blunt = new LinearEdge(767e6, 168.8e6, 222e6, 27.7e3, 26.6e3, 0.7e3);
    SoftTurn turn =
        SoftForces.over(
            tool(4, 30),
            cut(Operation.SIDE_DOWN, 2),
            new ToolRunout(6e-6, 0.3, 0, 0),
            blunt,
            10e-6,
            3e-6,
            360);
    assertThat(turn).isInstanceOf(SoftTurn.Unsettled.class);
    SoftTurn.Unsettled unsettled = (SoftTurn.Unsettled) turn;
    assertThat(unsettled.angles()).isPositive();
    assertThat(unsettled.left()).isGreaterThan(1.5e-9);
    assertThat(unsettled.why().code()).isEqualTo("nose-unsettled");
  }

  @Test
  void refusesACompliancePointingTheWrongWay() {
    assertThatThrownBy(
            () ->
                SoftForces.over(
                    tool(2, 30), cut(Operation.SLOT, 1), ToolRunout.NONE, INVENTED, -1e-6, 0, 360))
        .hasMessage("compliance -1.0E-6, 0.0 is not 0 or above (m/N)");
  }

  private static double far(Samples a, Samples b) {
    return Samples.generate(a.size(), i -> Math.abs(a.get(i) - b.get(i))).max();
  }

  private static ForceTurn settled(SoftTurn turn) {
    assertThat(turn).isInstanceOf(SoftTurn.Settled.class);
    return ((SoftTurn.Settled) turn).turn();
  }

  private static Tool tool(int teeth, double helix) {
    return new Tool(3e-3, teeth, Math.toRadians(helix), 9e-3, 20e-3, 3e-3, 580e9);
  }

  private static Conditions cut(Operation operation, double depth) {
    double radial = operation == Operation.SLOT ? 3e-3 : 0.9e-3;
    return new Conditions(operation, 300, 15e-6, 1e-3 * depth, radial);
  }
}
