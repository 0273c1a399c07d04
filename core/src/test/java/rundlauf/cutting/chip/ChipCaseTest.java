package rundlauf.cutting.chip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rundlauf.CaseTable;
import rundlauf.cutting.Conditions;
import rundlauf.cutting.Operation;
import rundlauf.cutting.Tool;
import rundlauf.cutting.ToolRunout;

class ChipCaseTest {
  private static final double FEED = 40e-6;
  private static final CaseTable TABLE = CaseTable.read("cutting/runout_chip");

  static IntStream rows() {
    return IntStream.range(0, TABLE.rows().size());
  }

  @ParameterizedTest
  @MethodSource("rows")
  void peakChipOfEachToothInTheOrderOfTheTeeth(int row) {
    int teeth = (int) TABLE.number(row, "N");
    Tool straight = new Tool(6e-3, teeth, 0, 12e-3, 20e-3, 6e-3, 580e9);
    Conditions slot = new Conditions(Operation.SLOT, 200, FEED, 1e-3, 6e-3);
    ToolRunout runout =
        new ToolRunout(
            FEED * TABLE.number(row, "rho_over_c"),
            Math.toRadians(TABLE.number(row, "lambda_deg")),
            0,
            0);
    ChipLoads loads = ChipLoads.of(straight, slot, runout);
    // source: recomputed: look-back formula and a surface-recession simulation, within 1e-9;
    // cases/cutting/runout_chip.csv
    for (int k = 0; k < teeth; k++) {
      assertThat(loads.teeth().get(k).peak() / FEED)
          .as("tooth %d", k + 1)
          .isCloseTo(TABLE.number(row, "h" + (k + 1) + "_over_c"), within(6e-7));
    }
    assertThat(loads.teethCutting()).isEqualTo((int) TABLE.number(row, "active_teeth"));
  }
}
