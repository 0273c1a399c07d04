package rundlauf.cutting.force;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import rundlauf.cutting.Coefficients;
import rundlauf.cutting.Coefficients.LinearEdge;
import rundlauf.cutting.Conditions;
import rundlauf.cutting.Operation;
import rundlauf.cutting.Tool;
import rundlauf.cutting.ToolRunout;
import rundlauf.maths.Samples;
import rundlauf.maths.Stream;

class ForceLawTest {
  /** Invented, of the size of aluminium. */
  private static final LinearEdge INVENTED = new LinearEdge(800e6, 200e6, 100e6, 10e3, 12e3, 1e3);

  private static final LinearEdge NO_EDGE = new LinearEdge(800e6, 200e6, 100e6, 0, 0, 0);
  private static final ToolRunout RUNOUT = new ToolRunout(9e-6, 0.4, 0.3e-3, 1.1);

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void meansAreThoseOfTheClosedForm(int seed) {
    Stream stream = Stream.of(seed, "means");
    Operation operation = Operation.values()[seed % 3];
    int teeth = 1 + stream.index(5);
    double d = 1e-3 + 5e-3 * stream.uniform();
    double radial = operation == Operation.SLOT ? d : d * (0.05 + 0.9 * stream.uniform());
    double depth = d * (0.02 + 1.5 * stream.uniform());
    Tool tool = tool(d, teeth, 50 * stream.uniform());
    Conditions cut = new Conditions(operation, 200, 30e-6, depth, radial);
    ForceTurn turn = RigidForces.over(tool, cut, ToolRunout.NONE, INVENTED, 3600);
    double scale = RigidForces.over(tool, cut, ToolRunout.NONE, INVENTED, 360).lateral().max();
    // source: E. Budak, Y. Altintas, E.J.A. Armarego 1996, means over a revolution (from memory)
    assertThat(turn.x().mean()).isCloseTo(closed(tool, cut, 'x'), within(1e-5 * scale));
    assertThat(turn.y().mean()).isCloseTo(closed(tool, cut, 'y'), within(1e-5 * scale));
    assertThat(turn.z().mean()).isCloseTo(closed(tool, cut, 'z'), within(1e-5 * scale));
    assertThat(turn.torque().mean() / (d / 2))
        .isCloseTo(closed(tool, cut, 't'), within(1e-5 * scale));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 1e-9, 0.3, 2})
  void meansHoldForTeethAsGoodAsStraight(double helix) {
    Tool tool = tool(3e-3, 2, helix);
    Conditions cut = new Conditions(Operation.SIDE_DOWN, 200, 30e-6, 0.5e-3, 0.4e-3);
    ForceTurn turn = RigidForces.over(tool, cut, ToolRunout.NONE, INVENTED, 360);
    // source: E. Budak, Y. Altintas, E.J.A. Armarego 1996, means over a revolution (from memory)
    assertThat(turn.x().mean()).isCloseTo(closed(tool, cut, 'x'), within(1e-4));
    assertThat(turn.y().mean()).isCloseTo(closed(tool, cut, 'y'), within(1e-4));
    assertThat(turn.torque().mean() / 1.5e-3).isCloseTo(closed(tool, cut, 't'), within(1e-4));
  }

  /** Means over a revolution by the formulas, SI, from the entry to the exit. */
  private static double closed(Tool tool, Conditions cut, char what) {
    double d = tool.diameter();
    double from = 0;
    double to = Math.PI;
    if (cut.operation() == Operation.SIDE_UP) {
      to = Math.acos(1 - 2 * cut.radial() / d);
    }
    if (cut.operation() == Operation.SIDE_DOWN) {
      from = Math.acos(2 * cut.radial() / d - 1);
    }
    double c = cut.feedPerTooth();
    double chip = tool.teeth() * cut.axial() * c / (8 * Math.PI);
    double edge = tool.teeth() * cut.axial() / (2 * Math.PI);
    LinearEdge k = INVENTED;
    DoubleUnaryOperator bracket =
        switch (what) {
          case 'x' ->
              p ->
                  chip * (k.ktc() * Math.cos(2 * p) - k.krc() * (2 * p - Math.sin(2 * p)))
                      + edge * (-k.kte() * Math.sin(p) + k.kre() * Math.cos(p));
          case 'y' ->
              p ->
                  chip * (k.ktc() * (2 * p - Math.sin(2 * p)) + k.krc() * Math.cos(2 * p))
                      - edge * (k.kte() * Math.cos(p) + k.kre() * Math.sin(p));
          case 'z' -> p -> edge * (-k.kac() * c * Math.cos(p) + k.kae() * p);
          default -> p -> edge * (-k.ktc() * c * Math.cos(p) + k.kte() * p);
        };
    return bracket.applyAsDouble(to) - bracket.applyAsDouble(from);
  }

  @ParameterizedTest
  @EnumSource(Operation.class)
  void workOfTheChipIsItsVolumeTimesTheCoefficient(Operation operation) {
    Tool tool = tool(3e-3, 3, 30);
    double radial = operation == Operation.SLOT ? 3e-3 : 0.7e-3;
    Conditions cut = new Conditions(operation, 250, 20e-6, 1.5e-3, radial);
    double volume = 3 * 20e-6 * 250 * radial * 1.5e-3;
    // source: recomputed: power = Ktc · feed · radial · axial without edge force
    assertThat(RigidForces.over(tool, cut, ToolRunout.NONE, NO_EDGE, 3600).power(250))
        .isCloseTo(800e6 * volume, within(1e-5 * 800e6 * volume));
  }

  @ParameterizedTest
  @EnumSource(Operation.class)
  void withoutEdgeForceTheMeanForceDoesNotDependOnRunout(Operation operation) {
    Tool tool = tool(3e-3, 3, 30);
    Conditions cut = cut(operation);
    ForceTurn still = RigidForces.over(tool, cut, ToolRunout.NONE, NO_EDGE, 1440);
    for (double first : new double[] {0, 0.7, 2.9}) {
      ToolRunout runout = new ToolRunout(25e-6, first, 1e-3, 2);
      ForceTurn turn = RigidForces.over(tool, cut, runout, NO_EDGE, 1440);
      // source: W.A. Kline, R.E. DeVor 1983: the chips add up to N c sin φ whatever the runout
      assertThat(turn.x().mean()).isCloseTo(still.x().mean(), within(2e-3));
      assertThat(turn.y().mean()).isCloseTo(still.y().mean(), within(2e-3));
      assertThat(turn.z().mean()).isCloseTo(still.z().mean(), within(2e-3));
      assertThat(turn.lateral().max()).isGreaterThan(1.2 * still.lateral().max());
    }
  }

  @Test
  void idleTeethLowerTheEdgeShareOnly() {
    Tool straight = tool(3e-3, 2, 0);
    Conditions cut = cut(Operation.SLOT);
    ToolRunout idle = new ToolRunout(20e-6, 0, 0, 0);
    ForceTurn both = RigidForces.over(straight, cut, ToolRunout.NONE, INVENTED, 1440);
    ForceTurn one = RigidForces.over(straight, cut, idle, INVENTED, 1440);
    // source: recomputed: with one of two teeth idle the edge part of the slot's mean,
    // −(N a/π) Kre in x and (N a/π) Kte in y, is halved
    double half = 1e-3 / Math.PI;
    assertThat(one.x().mean() - both.x().mean()).isCloseTo(half * 12e3, within(1e-3));
    assertThat(one.y().mean() - both.y().mean()).isCloseTo(-half * 10e3, within(1e-3));
  }

  @Test
  void turningTheHighSpotByAToothOnlyShiftsTheForce() {
    Tool tool = tool(3e-3, 3, 30);
    double pitch = 2 * Math.PI / 3;
    ToolRunout turned = new ToolRunout(9e-6, 0.4 + pitch, 0.3e-3, 1.1 + pitch);
    ForceTurn one = RigidForces.over(tool, cut(Operation.SIDE_UP), RUNOUT, INVENTED, 360);
    ForceTurn other = RigidForces.over(tool, cut(Operation.SIDE_UP), turned, INVENTED, 360);
    for (int i = 0; i < 360; i++) {
      int before = Math.floorMod(i - 120, 360);
      assertThat(other.x().get(i)).isCloseTo(one.x().get(before), within(1e-9));
      assertThat(other.y().get(i)).isCloseTo(one.y().get(before), within(1e-9));
      assertThat(other.torque().get(i)).isCloseTo(one.torque().get(before), within(1e-12));
    }
  }

  @Test
  void conventionalAndClimbMirrorEachOther() {
    // φ becomes π − φ: the tangential force turns round in x, the radial one in y
    LinearEdge tangential = new LinearEdge(800e6, 0, 100e6, 10e3, 0, 1e3);
    LinearEdge radial = new LinearEdge(0, 200e6, 0, 0, 12e3, 0);
    ForceTurn up = over(Operation.SIDE_UP, tangential);
    ForceTurn down = over(Operation.SIDE_DOWN, tangential);
    assertThat(down.x().mean()).isCloseTo(-up.x().mean(), within(1e-4));
    assertThat(down.y().mean()).isCloseTo(up.y().mean(), within(1e-4));
    assertThat(down.z().mean()).isCloseTo(up.z().mean(), within(1e-4));
    assertThat(down.torque().mean()).isCloseTo(up.torque().mean(), within(1e-7));
    ForceTurn inUp = over(Operation.SIDE_UP, radial);
    ForceTurn inDown = over(Operation.SIDE_DOWN, radial);
    assertThat(inDown.x().mean()).isCloseTo(inUp.x().mean(), within(1e-4));
    assertThat(inDown.y().mean()).isCloseTo(-inUp.y().mean(), within(1e-4));
    // together they do not mirror: conventional pulls back along the feed, climb pushes ahead
    assertThat(over(Operation.SIDE_UP, INVENTED).x().mean()).isNegative();
    assertThat(over(Operation.SIDE_DOWN, INVENTED).x().mean()).isPositive();
  }

  @Test
  void aLeftHandHelixTurnsTheAxialForceRound() {
    Conditions cut = cut(Operation.SIDE_DOWN);
    ForceTurn right = RigidForces.over(tool(3e-3, 2, 30), cut, ToolRunout.NONE, INVENTED, 720);
    ForceTurn left = RigidForces.over(tool(3e-3, 2, -30), cut, ToolRunout.NONE, INVENTED, 720);
    assertThat(right.z().min()).isGreaterThanOrEqualTo(0);
    assertThat(right.z().max()).isPositive();
    assertThat(left.z().mean()).isCloseTo(-right.z().mean(), within(1e-4));
    assertThat(left.x().mean()).isCloseTo(right.x().mean(), within(1e-4));
    assertThat(left.y().mean()).isCloseTo(right.y().mean(), within(1e-4));
  }

  @Test
  void forcesScale() {
    ForceTurn one = RigidForces.over(tool(3e-3, 2, 30), cut(Operation.SLOT), RUNOUT, INVENTED, 360);
    LinearEdge doubled = new LinearEdge(1600e6, 400e6, 200e6, 20e3, 24e3, 2e3);
    ForceTurn twice =
        RigidForces.over(tool(3e-3, 2, 30), cut(Operation.SLOT), RUNOUT, doubled, 360);
    assertThat(far(one.x().map(f -> 2 * f), twice.x())).isLessThan(1e-9);
    assertThat(far(one.torque().map(f -> 2 * f), twice.torque())).isLessThan(1e-12);
    // every length doubled: the chip's part of the force is four times as large, the edge's twice
    Conditions large = new Conditions(Operation.SLOT, 200, 40e-6, 2e-3, 6e-3);
    ToolRunout wide = new ToolRunout(18e-6, 0.4, 0.3e-3, 1.1);
    LinearEdge edgeTwice = new LinearEdge(800e6, 200e6, 100e6, 20e3, 24e3, 2e3);
    ForceTurn four = RigidForces.over(tool(6e-3, 2, 30), large, wide, edgeTwice, 360);
    assertThat(far(one.x().map(f -> 4 * f), four.x())).isLessThan(1e-9);
    assertThat(far(one.torque().map(f -> 8 * f), four.torque())).isLessThan(1e-12);
  }

  @Test
  void aPowerOfNoneIsTheLinearModelWithoutEdge() {
    Coefficients flat = new Coefficients.Kienzle(800e6, 0, 0.25, 0.125, true);
    ForceTurn power =
        RigidForces.over(tool(3e-3, 3, 30), cut(Operation.SIDE_UP), RUNOUT, flat, 360);
    ForceTurn linear =
        RigidForces.over(tool(3e-3, 3, 30), cut(Operation.SIDE_UP), RUNOUT, NO_EDGE, 360);
    assertThat(far(power.x(), linear.x())).isLessThan(1e-4);
    assertThat(far(power.y(), linear.y())).isLessThan(1e-4);
    assertThat(far(power.z(), linear.z())).isLessThan(1e-4);
    assertThat(far(power.torque(), linear.torque())).isLessThan(2e-7);
  }

  @Test
  void aWideCutOfManyTurnsOfTheHelixIsSummedAllTheWay() {
    // 20 mm deep at 60°: the edge winds round more than three times
    Tool tool = tool(3e-3, 1, 60);
    Conditions deep = new Conditions(Operation.SIDE_UP, 200, 20e-6, 20e-3, 1e-3);
    ForceTurn turn = RigidForces.over(tool, deep, ToolRunout.NONE, INVENTED, 720);
    assertThat(turn.x().mean()).isCloseTo(closed(tool, deep, 'x'), within(2e-3));
    assertThat(turn.y().mean()).isCloseTo(closed(tool, deep, 'y'), within(2e-3));
    assertThat(turn.x().max()).isNegative();
  }

  @Test
  void refusesWhatItCannotTurn() {
    Tool tool = tool(3e-3, 2, 30);
    Conditions wide = new Conditions(Operation.SIDE_UP, 200, 20e-6, 1e-3, 4e-3);
    assertThatThrownBy(() -> RigidForces.over(tool, wide, ToolRunout.NONE, INVENTED, 360))
        .hasMessage("radial 0.004 is above the diameter 0.003 (m)");
    assertThatThrownBy(
            () -> RigidForces.over(tool, cut(Operation.SLOT), ToolRunout.NONE, INVENTED, 7))
        .hasMessage("angles 7 is below 8 (count)");
    assertThatThrownBy(() -> new ToolRunout(-1e-6, 0, 0, 0))
        .hasMessage("eccentricity -1.0E-6 is not 0 or above and finite (m)");
    assertThatThrownBy(() -> new Conditions(Operation.SLOT, 200, Double.NaN, 1e-3, 3e-3))
        .hasMessage("feedPerTooth NaN is not above 0 and finite (m)");
    assertThatThrownBy(() -> tool(3e-3, 2, 90))
        .hasMessage("helix 1.5707963267948966 is not between ±1.5707963267948966 (rad)");
  }

  private static ForceTurn over(Operation operation, Coefficients k) {
    return RigidForces.over(tool(3e-3, 2, 30), cut(operation), ToolRunout.NONE, k, 1440);
  }

  private static double far(Samples a, Samples b) {
    return Samples.generate(a.size(), i -> Math.abs(a.get(i) - b.get(i))).max();
  }

  private static Tool tool(double diameter, int teeth, double helix) {
    return new Tool(diameter, teeth, Math.toRadians(helix), 9e-3, 20e-3, diameter, 580e9);
  }

  private static Conditions cut(Operation operation) {
    double radial = operation == Operation.SLOT ? 3e-3 : 0.9e-3;
    return new Conditions(operation, 200, 20e-6, 1e-3, radial);
  }
}
