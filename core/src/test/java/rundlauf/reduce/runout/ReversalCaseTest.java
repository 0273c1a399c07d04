package rundlauf.reduce.runout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import rundlauf.CaseTable;
import rundlauf.maths.Samples;

/** A pin read twice, the second time turned by half a turn in its holder. */
class ReversalCaseTest {
  @Test
  void halfTheSumIsTheSpindlesAndHalfTheDifferenceThePins() {
    CaseTable table = CaseTable.read("metrology/reversal");
    List<Clock> clocks = List.of(new Clock(0, 0), new Clock(0, Math.PI));
    PartsDesign design = PartsDesign.of(clocks);
    assertThat(design.bodies())
        .extracting(b -> b.name())
        .containsExactly("spindle+collet", "shank");
    List<Samples> weights = design.weights();
    for (int i = 0; i < table.rows().size(); i++) {
      double first = table.column("M1").get(i);
      // There the dial is turned with the pin, here it stands: what it sees has the other sign.
      double turned = -table.column("M2").get(i);
      // source: recomputed: reversal (Donaldson 1972, from memory), P = (M1 + M2)/2, S = (M1 −
      // M2)/2
      assertThat(of(weights.get(0), first, turned))
          .isCloseTo(table.column("S").get(i), within(1e-12));
      assertThat(of(weights.get(1), first, turned))
          .isCloseTo(table.column("P").get(i), within(1e-12));
    }
  }

  /** The part's in-phase component: real parts of the weights alone, the readings being real. */
  private static double of(Samples weights, double first, double turned) {
    assertThat(weights.get(1)).isCloseTo(0, within(1e-12));
    assertThat(weights.get(3)).isCloseTo(0, within(1e-12));
    return weights.get(0) * first + weights.get(2) * turned;
  }
}
