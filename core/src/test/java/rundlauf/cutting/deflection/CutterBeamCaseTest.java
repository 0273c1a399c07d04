package rundlauf.cutting.deflection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rundlauf.CaseTable;
import rundlauf.cutting.Stiffness;
import rundlauf.cutting.Tool;
import rundlauf.maths.Stream;

class CutterBeamCaseTest {
  private static final CaseTable TABLE = CaseTable.read("cutting/stepped_beam");

  private static Tool tool(int row) {
    return new Tool(
        TABLE.number(row, "D_mm") / 1e3,
        2,
        0,
        TABLE.number(row, "Lf_mm") / 1e3,
        TABLE.number(row, "L_mm") / 1e3,
        TABLE.number(row, "shank_mm") / 1e3,
        TABLE.number(row, "E_GPa") * 1e9);
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2})
  void bendsAsTheSteppedCantilever(int row) {
    CutterBeam beam = CutterBeam.of(tool(row));
    double force = TABLE.number(row, "F_N");
    // source: recomputed: stepped cantilever with flutes at 0.8 D (Kops and Vo 1990) by closed form
    // and by a finite-element beam, cases/cutting/stepped_beam.csv
    assertThat(force * beam.tipCompliance() * 1e6)
        .isCloseTo(TABLE.number(row, "tip_deflection_um"), within(5e-5));
    assertThat(1e-6 / beam.tipCompliance()).isCloseTo(TABLE.number(row, "k_N_um"), within(5e-5));
    assertThat(beam.stressAtFluteRoot(force * beam.fluteLength()) / 1e6)
        .isCloseTo(TABLE.number(row, "sigma_flute_root_MPa"), within(5e-3));
    assertThat(beam.stressAtNut(force * beam.stickout()) / 1e6)
        .isCloseTo(TABLE.number(row, "sigma_clamp_MPa"), within(5e-3));
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2})
  void aSolidBarBendsLess(int row) {
    Tool t = tool(row);
    CutterBeam solid =
        new CutterBeam(t.diameter(), t.stickout(), t.stickout(), t.diameter(), t.modulus());
    // source: recomputed: cantilever F L^3 / (3 E I), cases/cutting/stepped_beam.csv
    assertThat(TABLE.number(row, "F_N") * solid.tipCompliance() * 1e6)
        .isCloseTo(TABLE.number(row, "solid_D_deflection_um"), within(5e-5));
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
  void loadAndPlaceMayBeChangedForEachOther(int seed) {
    Stream stream = Stream.of(seed, "heights");
    CutterBeam beam = new CutterBeam(2.4e-3, 9e-3, 20e-3, 3.175e-3, 580e9);
    double a = 20e-3 * stream.uniform();
    double b = 20e-3 * stream.uniform();
    // source: Maxwell's reciprocal theorem
    assertThat(beam.compliance(a, b)).isCloseTo(beam.compliance(b, a), within(1e-20));
    assertThat(beam.compliance(a, b)).isCloseTo(integrated(beam, a, b), within(2e-6 * 1e-6));
  }

  /** Slope and shift summed up from the nut down, step by step. */
  private static double integrated(CutterBeam beam, double load, double at) {
    int steps = 200_000;
    double ds = beam.stickout() / steps;
    double slope = 0;
    double shift = 0;
    for (int s = steps - 1; (s + 0.5) * ds > at; s--) {
      double z = (s + 0.5) * ds;
      double d = z < beam.fluteLength() ? beam.fluteDiameter() : beam.shank();
      double curvature = Math.max(0, z - load) / (beam.modulus() * Math.PI * Math.pow(d, 4) / 64);
      shift += slope * ds + curvature * ds * ds / 2;
      slope += curvature * ds;
    }
    return shift;
  }

  @Test
  void theSetupAddsItsShiftAtEveryHeight() {
    Tool t = tool(0);
    CutterBeam beam = CutterBeam.of(t);
    Flexibility held = Flexibility.of(t, new Stiffness(0.5e6, 0.8e6));
    assertThat(held.tipX()).isCloseTo(beam.tipCompliance() + 2e-6, within(1e-15));
    assertThat(held.tipY()).isCloseTo(beam.tipCompliance() + 1.25e-6, within(1e-15));
    assertThat(held.y(1e-3, 4e-3)).isCloseTo(beam.compliance(1e-3, 4e-3) + 1.25e-6, within(1e-15));
    assertThat(Flexibility.ofTip(t, held.tipX(), held.tipY()).setupY())
        .isCloseTo(1.25e-6, within(1e-15));
    assertThat(Flexibility.of(t, Stiffness.RIGID).tipX()).isEqualTo(beam.tipCompliance());
  }

  @Test
  void whatCannotBeIsRefused() {
    Tool t = tool(0);
    assertThatThrownBy(() -> Flexibility.ofTip(t, 1e-6, 1e-6))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("is below 0");
    assertThatThrownBy(() -> CutterBeam.of(t).compliance(21e-3, 0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("zLoad");
    assertThatThrownBy(() -> new CutterBeam(2e-3, 21e-3, 20e-3, 3e-3, 6e11))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("fluteLength");
  }
}
