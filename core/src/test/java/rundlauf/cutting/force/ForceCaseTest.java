package rundlauf.cutting.force;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rundlauf.CaseTable;
import rundlauf.cutting.Coefficients;
import rundlauf.cutting.Coefficients.LinearEdge;
import rundlauf.cutting.Conditions;
import rundlauf.cutting.Operation;
import rundlauf.cutting.Tool;
import rundlauf.cutting.ToolRunout;
import rundlauf.cutting.chip.Slices;
import rundlauf.maths.Samples;

class ForceCaseTest {
  private static final CaseTable EXAMPLES = CaseTable.read("cutting/force_examples");
  private static final CaseTable RUNOUT = CaseTable.read("cutting/forces_runout");
  private static final CaseTable KIENZLE = CaseTable.read("cutting/kienzle_milling_examples");

  static IntStream examples() {
    return IntStream.range(0, EXAMPLES.rows().size());
  }

  static IntStream runouts() {
    return IntStream.range(0, RUNOUT.rows().size());
  }

  static IntStream powers() {
    return IntStream.range(0, KIENZLE.rows().size());
  }

  @ParameterizedTest
  @MethodSource("examples")
  void meansAndPeaksOfATrueCutter(int row) {
    Tool tool =
        tool(
            EXAMPLES.number(row, "D_mm"),
            (int) EXAMPLES.number(row, "N"),
            EXAMPLES.number(row, "helix_deg"));
    ForceTurn turn = RigidForces.over(tool, example(row), ToolRunout.NONE, coefficients(row), 3600);
    // source: recomputed: linear edge-force model, closed form and 7200 angles, 4 decimals equal;
    // cases/cutting/force_examples.csv
    assertThat(turn.x().mean()).isCloseTo(EXAMPLES.number(row, "Fx_avg_N"), within(3e-4));
    assertThat(turn.y().mean()).isCloseTo(EXAMPLES.number(row, "Fy_avg_N"), within(3e-4));
    assertThat(turn.z().mean()).isCloseTo(EXAMPLES.number(row, "Fz_avg_N"), within(3e-4));
    assertThat(turn.torque().mean() / 3e-3)
        .isCloseTo(EXAMPLES.number(row, "Ft_avg_N"), within(3e-4));
    // source: recomputed: the same by closed z integral and 2000 slices, within 0.11 N
    assertThat(turn.x().min()).isCloseTo(EXAMPLES.number(row, "Fx_min_N"), within(0.11));
    assertThat(turn.x().max()).isCloseTo(EXAMPLES.number(row, "Fx_max_N"), within(0.11));
    assertThat(turn.y().min()).isCloseTo(EXAMPLES.number(row, "Fy_min_N"), within(0.11));
    assertThat(turn.y().max()).isCloseTo(EXAMPLES.number(row, "Fy_max_N"), within(0.11));
    assertThat(turn.z().max()).isCloseTo(EXAMPLES.number(row, "Fz_max_N"), within(0.11));
    assertThat(turn.lateral().max()).isCloseTo(EXAMPLES.number(row, "Fxy_max_N"), within(0.11));
    assertThat(turn.torque().max() / 3e-3)
        .isCloseTo(EXAMPLES.number(row, "Ft_max_N"), within(0.11));
  }

  @ParameterizedTest
  @MethodSource("runouts")
  void meansPeaksAndChipsWithRunout(int row) {
    ToolRunout runout = new ToolRunout(1e-3 * RUNOUT.number(row, "rho_mm"), 0, 0, 0);
    Conditions cut = new Conditions(Operation.SLOT, 10000 / 60.0, 50e-6, 3e-3, 6e-3);
    Slices slices = new Slices(300, 1e-5);
    ForceTurn turn = RigidForces.over(tool(6, 2, 30), cut, runout, coefficients(0), slices, 1440);
    // source: recomputed: look-back formula (300 slices, 1440 angles) and surface recession (2400
    // by
    // 7200), means within 0.013 N; cases/cutting/forces_runout.csv
    assertThat(turn.x().mean()).isCloseTo(RUNOUT.number(row, "Fx_avg_N"), within(0.013));
    assertThat(turn.y().mean()).isCloseTo(RUNOUT.number(row, "Fy_avg_N"), within(0.013));
    assertThat(turn.z().mean()).isCloseTo(RUNOUT.number(row, "Fz_avg_N"), within(0.013));
    // source: recomputed: the same, peaks within 0.001 N
    assertThat(turn.lateral().max()).isCloseTo(RUNOUT.number(row, "Fxy_max_N"), within(0.001));
    // source: recomputed: the same; the table took the chip half a slice below the top of the cut
    for (int k = 0; k < 2; k++) {
      assertThat(1e3 * turn.teeth().get(k).peak())
          .isCloseTo(RUNOUT.number(row, "hmax_tooth" + (k + 1) + "_mm"), within(3e-5));
    }
  }

  @ParameterizedTest
  @MethodSource("powers")
  void powerByKienzle(int row) {
    double d = KIENZLE.number(row, "D_mm");
    double ae = KIENZLE.number(row, "ae_mm");
    Conditions cut =
        new Conditions(
            ae == d ? Operation.SLOT : Operation.SIDE_UP,
            KIENZLE.number(row, "n_rpm") / 60,
            1e-3 * KIENZLE.number(row, "fz_mm"),
            1e-3 * KIENZLE.number(row, "ap_mm"),
            1e-3 * ae);
    Coefficients k =
        new Coefficients.Kienzle(
            1e6 * KIENZLE.number(row, "kc11_N_mm2"), KIENZLE.number(row, "mc"), 0.4, 0, false);
    Tool tool = tool(d, (int) KIENZLE.number(row, "z"), 30);
    ForceTurn turn = RigidForces.over(tool, cut, ToolRunout.NONE, k, 1440);
    // source: recomputed: Kienzle's law over the engagement by two quadratures, within 4e-6;
    // cases/cutting/kienzle_milling_examples.csv
    double exact = 1e3 * KIENZLE.number(row, "P_exact_kW");
    assertThat(turn.power(cut.speed())).isCloseTo(exact, within(3e-5 * exact));
    assertThat(turn.z()).isEqualTo(Samples.of());
  }

  private static Conditions example(int row) {
    boolean slot = EXAMPLES.number(row, "ae_mm") == EXAMPLES.number(row, "D_mm");
    String mode = EXAMPLES.rows().get(row).get(EXAMPLES.columns().indexOf("mode"));
    Operation side = mode.equals("up") ? Operation.SIDE_UP : Operation.SIDE_DOWN;
    return new Conditions(
        slot ? Operation.SLOT : side,
        10000 / 60.0,
        1e-3 * EXAMPLES.number(row, "c_mm"),
        1e-3 * EXAMPLES.number(row, "ap_mm"),
        1e-3 * EXAMPLES.number(row, "ae_mm"));
  }

  private static LinearEdge coefficients(int row) {
    // source: Chin. J. Mech. Eng. 2021, Table 5 (doi 10.1186/s10033-021-00536-9), Al6082-T6 [189]
    // and Al7075-T6 [190]
    return EXAMPLES.rows().get(row).get(0).equals("Al6082-T6")
        ? new LinearEdge(631e6, 99e6, 273e6, 13e3, 10e3, 2.8e3)
        : new LinearEdge(767.01e6, 168.8e6, 222e6, 27.7e3, 26.6e3, 0.7e3);
  }

  private static Tool tool(double diameter, int teeth, double helix) {
    return new Tool(
        1e-3 * diameter, teeth, Math.toRadians(helix), 20e-3, 30e-3, 1e-3 * diameter, 580e9);
  }
}
