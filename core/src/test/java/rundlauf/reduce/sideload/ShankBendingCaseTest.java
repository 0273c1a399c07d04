package rundlauf.reduce.sideload;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import rundlauf.CaseTable;
import rundlauf.quantity.Measured;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Unit;
import rundlauf.readings.LoadReadings;

class ShankBendingCaseTest {
  @Test
  void roundBarLoadedAtItsEnd() {
    CaseTable table = CaseTable.read("side-load/stepped_beam");
    for (int i = 0; i < table.rows().size(); i++) {
      double length = table.number(i, "L_mm") * 1e-3;
      double diameter = table.number(i, "D_mm") * 1e-3;
      double bending =
          ShankBending.bending(length, length, diameter, table.number(i, "E_GPa") * 1e9);
      // source: recomputed: solid cantilever by closed form and by a finite-element beam, all
      // printed digits equal
      assertThat(bending * table.number(i, "F_N") * 1e6)
          .isCloseTo(table.number(i, "solid_D_deflection_um"), within(0.00005));
    }
  }

  @Test
  void dialBesideTheLoad() {
    // source: from memory: cantilever of length L with an end load F: y(x) = F x² (3L − x) / 6EI
    double inertia = Math.PI * Math.pow(3e-3, 4) / 64;
    double atHalf = 0.01 * 0.01 * (0.06 - 0.01) / (6 * 2e11 * inertia);
    assertThat(ShankBending.bending(0.02, 0.01, 3e-3, 2e11))
        .isCloseTo(atHalf, Percentage.withPercentage(1e-9));
    // source: from memory: Maxwell and Betti: exchanging load and dial changes nothing
    assertThat(ShankBending.compliance(0.01, 0.02, 3e-3, 2e11))
        .isEqualTo(ShankBending.compliance(0.02, 0.01, 3e-3, 2e11));
  }

  @Test
  void shearCountsInShortBarsOnly() {
    // source: from memory: Timoshenko: shear over bending of a round end-loaded cantilever is
    // 3EI / κGAL² = 3 (1 + ν) d² / 8κL²
    double ratio = ShankBending.shear(0.015, 0.015, 3e-3, 2e11);
    ratio /= ShankBending.bending(0.015, 0.015, 3e-3, 2e11);
    double expected = 3 * 1.25 / (8 * ShankBending.shearCoefficient()) / 25;
    assertThat(ratio).isCloseTo(expected, Percentage.withPercentage(1e-9));
    // source: from memory: Cowper 1966: κ of a round bar is 0.886 at ν = 0.3 and 6/7 at ν = 0
    assertThat(ShankBending.shearCoefficient()).isBetween(6 / 7.0, 0.886);
  }

  @Test
  void gripInsideTheNoseIsTheLargestDoubt() {
    LoadReadings.Body body =
        new LoadReadings.Body(
            new Quantity(3e-3, 0.005e-3, Unit.MILLIMETRE),
            new Quantity(2.1e11, 5e9, Unit.GIGAPASCAL));
    Quantity contact = new Quantity(10e-3, 0.2e-3, Unit.MILLIMETRE);
    Measured found = ShankBending.of(body, contact, 10e-3, "push.yaml");
    double nominal = ShankBending.compliance(10.75e-3, 10.75e-3, 3e-3, 2.1e11);
    assertThat(found.value()).isCloseTo(nominal, Percentage.withPercentage(1e-9));
    assertThat(found.budget().get(0).cause().part()).isEqualTo("grip-point");
    // source: recomputed: the grip anywhere in half a diameter moves L³ by its ends' compliances
    assertThat(ShankBending.compliance(10e-3, 10e-3, 3e-3, 2.1e11))
        .isGreaterThan(found.interval(0.95).low());
    assertThat(ShankBending.compliance(11.5e-3, 11.5e-3, 3e-3, 2.1e11))
        .isLessThan(found.interval(0.95).high());
  }
}
