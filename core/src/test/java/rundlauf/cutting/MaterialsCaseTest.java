package rundlauf.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rundlauf.CaseTable;
import rundlauf.cutting.Coefficients.Kienzle;
import rundlauf.cutting.Coefficients.LinearEdge;
import rundlauf.maths.Draws;
import rundlauf.maths.Samples;
import rundlauf.quantity.Saying;

/** The library's numbers against where they stand. */
class MaterialsCaseTest {
  private static WorkMaterial named(String name) {
    return Materials.named(name).orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({
    "aluminium 6082-T6, Al6082-T6, 189",
    "aluminium 7075-T6, Al7075-T6, 190",
    "aluminium 6061-T6, Al6061-T6, 160"
  })
  void aluminiumIsThatOfTheReview(String name, String alloy, String reference) {
    CaseTable table = CaseTable.read("cutting/force_coefficients");
    int row = 0;
    while (!table.rows().get(row).subList(0, 2).equals(List.of(alloy, reference))) {
      row++;
    }
    LinearEdge k = (LinearEdge) named(name).coefficients();
    // source: "Milling Force Model for Aviation Aluminum Alloy", Chin. J. Mech. Eng. (2021), Table
    // 5, doi 10.1186/s10033-021-00536-9
    assertThat(k.ktc() / 1e6).isCloseTo(table.number(row, "Ktc_N_mm2"), within(1e-9));
    assertThat(k.krc() / 1e6).isCloseTo(table.number(row, "Krc_N_mm2"), within(1e-9));
    assertThat(k.kte() / 1e3).isCloseTo(table.number(row, "Kte_N_mm"), within(1e-9));
    assertThat(k.kre() / 1e3).isCloseTo(table.number(row, "Kre_N_mm"), within(1e-9));
    boolean axial = !table.rows().get(row).get(table.columns().indexOf("Kac_N_mm2")).isEmpty();
    assertThat(k.axialKnown()).isEqualTo(axial);
    assertThat(k.kac() / 1e6).isCloseTo(axial ? table.number(row, "Kac_N_mm2") : 0, within(1e-9));
    assertThat(k.kae() / 1e3).isCloseTo(axial ? table.number(row, "Kae_N_mm") : 0, within(1e-9));
    assertThat(table.rows().get(row).get(table.columns().indexOf("use"))).isEqualTo("yes");
  }

  @ParameterizedTest
  @CsvSource({"mild steel, St42", "cast iron, GG25"})
  void handbookPairsLieNearThePrintedTable(String name, String row) {
    CaseTable table = CaseTable.read("cutting/kc_table_fit");
    int i = table.rows().stream().map(r -> r.get(1)).toList().indexOf(row);
    Kienzle k = (Kienzle) named(name).coefficients();
    for (String column : table.columns().stream().filter(c -> c.startsWith("kc_f")).toList()) {
      double h = Double.parseDouble(column.substring(4)) * Math.sin(Math.PI / 4);
      double kc = k.kc11() / 1e6 * Math.pow(h, -k.mc());
      // source: kc table of a workholding maker's manual, entering angle 45 degrees; its rows
      // attributed by us
      assertThat(kc).isCloseTo(1e3 * table.number(i, column), within(33e-3 * kc + 25));
    }
  }

  @Test
  void brassIsTheHandbooks() {
    Kienzle k = (Kienzle) named("brass").coefficients();
    // source: from memory: kc1.1 780 N/mm2, mc 0.18 (Tschaetsch and Dietrich; Paucksch)
    assertThat(k.kc11()).isEqualTo(780e6);
    assertThat(k.mc()).isEqualTo(0.18);
    // source: from memory: Machinery's Handbook, power constants, Table 1a: brass leaded 0.82,
    // medium
    // 1.36 J/mm3, at 0.3 mm
    assertThat(k.kc11() / 1e6 * Math.pow(0.3, -k.mc())).isBetween(820.0, 1360.0);
  }

  /** kc of the four carbide sets at a chip of h [mm]. */
  private static Samples kcOfAluminium(double h) {
    CaseTable t = CaseTable.read("cutting/force_coefficients");
    return Samples.generate(4, i -> t.number(i, "Ktc_N_mm2") + t.number(i, "Kte_N_mm") / h);
  }

  @Test
  void thinChipsAreDearerThanKienzleCarriedOnByAboutOneSpread() {
    Samples grown =
        Samples.generate(4, i -> kcOfAluminium(0.01).get(i) / kcOfAluminium(0.1).get(i));
    double kienzle = Math.pow(0.1, -0.2);
    // source: recomputed: Ktc + Kte / h of four carbide sets, Chin. J. Mech. Eng. (2021), Table 5
    assertThat(grown.min()).isCloseTo(2.54, within(0.01));
    assertThat(grown.max()).isCloseTo(3.39, within(0.01));
    double oneSpread = Math.pow(0.1, 0.2 - exponent(0.2, 1));
    double twoSpreads = Math.pow(0.1, 0.2 - exponent(0.2, 2));
    assertThat(grown.min() / kienzle).isGreaterThan(0.95 * oneSpread);
    assertThat(grown.max() / kienzle).isLessThan(twoSpreads);
  }

  /** Kienzle's exponent, its odds raised by so many spreads. */
  private static double exponent(double mc, double spreads) {
    double odds = mc / (1 - mc) * Math.exp(CoefficientDraws.EXPONENT_SPREAD * spreads);
    return odds / (1 + odds);
  }

  @Test
  void hardnessTellsTheSizeOfAluminiumsForce() {
    Samples kc = kcOfAluminium(0.02);
    // source: from memory: Brinell hardness of 6082-T6 and 6061-T6 about 95, of 7075-T6 about 150
    Samples hardness = Samples.of(95 * 9.81, 150 * 9.81, 95 * 9.81, 150 * 9.81);
    for (int i = 0; i < 4; i++) {
      assertThat(kc.get(i) / hardness.get(i)).isBetween(0.6, 1.6);
    }
  }

  @Test
  void guessesStandByTheirHardnessAndSaySo() {
    for (String name :
        List.of(
            "acrylic",
            "acetal",
            "polycarbonate",
            "hardwood",
            "ebony",
            "bone",
            "mother of pearl",
            "glass-epoxy laminate")) {
      WorkMaterial m = named(name);
      assertThat(m.status()).isEqualTo(Status.GUESS);
      assertThat(m.doubt().factor()).isCloseTo(3, within(1e-12));
      assertThat(m.cautions().get(0).code()).isEqualTo("material-guessed");
      assertThat(m.axialUnknown().map(Saying::code)).contains("axial-coefficients-unknown");
    }
    LinearEdge bone = (LinearEdge) named("bone").coefficients();
    assertThat((bone.ktc() + bone.kte() / 0.02e-3) / 1e6).isCloseTo(450, within(1e-9));
    LinearEdge hardwood = (LinearEdge) named("hardwood").coefficients();
    // source: B. Palubicki, Materials 14 (2021) 2208, abstract: particle board 32 to 37.6 N/mm2;
    // within the factor of 3 at a chip of 0.1 mm, by our guess for hardwood
    assertThat((hardwood.ktc() + hardwood.kte() / 0.1e-3) / 1e6).isBetween(32 / 3.0, 37.6 * 3);
  }

  @Test
  void metalsAreDoubtedByAFifthOrMore() {
    for (String name :
        List.of("aluminium 6082-T6", "aluminium 7075-T6", "brass", "mild steel", "cast iron")) {
      assertThat(named(name).doubt().common()).isBetween(0.15, 0.25);
    }
    // 6061-T6 stands at less than half of its neighbour's force, so its doubt is wider
    Samples kc = kcOfAluminium(0.02);
    assertThat(kc.get(2) / kc.get(0)).isLessThan(0.5);
    assertThat(named("aluminium 6061-T6").doubt().common()).isEqualTo(0.35);
    assertThat(named("aluminium 6061-T6").doubt().factor()).isGreaterThan(1.9);
  }

  @ParameterizedTest
  @ValueSource(strings = {"aluminium 6061-T6", "mild steel", "bone"})
  void drawsOfAMaterialStayWithinItsDoubt(String name) {
    WorkMaterial m = named(name);
    Draws draws = new Draws(7, 4000);
    List<Coefficients> all = CoefficientDraws.of(m, draws);
    double spread = m.doubt().common();
    Samples ft =
        Samples.generate(
            4000, i -> Math.log(tangential(all.get(i), 0.1) / tangential(m.coefficients(), 0.1)));
    assertThat(ft.mean()).isCloseTo(0, within(4 * spread / Math.sqrt(4000)));
    assertThat(ft.standardDeviation()).isCloseTo(spread, within(0.04 * spread));
    assertThat(CoefficientDraws.factor(m, draws).value()).isCloseTo(1, within(0.05));
    assertThat(CoefficientDraws.factor(m, draws).estimate().orElseThrow().interval().high())
        .isCloseTo(m.doubt().factor(), within(0.1 * m.doubt().factor()));
    assertThat(all).allSatisfy(k -> assertThat(k.axialKnown()).isFalse());
  }

  private static double tangential(Coefficients k, double h) {
    return k instanceof LinearEdge e
        ? e.ktc() * h * 1e-3 + e.kte()
        : ((Kienzle) k).kc11() * Math.pow(h, -((Kienzle) k).mc());
  }

  @Test
  void kienzlesDoubtGrowsAsTheChipGetsThinner() {
    WorkMaterial m = named("mild steel");
    List<Coefficients> all = CoefficientDraws.of(m, new Draws(7, 4000));
    double before = 0;
    for (double h : new double[] {0.1, 0.05, 0.02, 0.01, 0.005}) {
      Samples logs = Samples.generate(4000, i -> Math.log(tangential(all.get(i), h)));
      assertThat(logs.standardDeviation()).isGreaterThan(1.02 * before);
      before = logs.standardDeviation();
    }
    assertThat(before).isGreaterThan(2 * m.doubt().common());
    assertThat(all).allSatisfy(k -> assertThat(((Kienzle) k).mc()).isBetween(0.0, 1.0));
    Samples ratio = Samples.generate(4000, i -> ((Kienzle) all.get(i)).radialRatio());
    assertThat(ratio.min()).isGreaterThan(0.4 - 1e-9);
    assertThat(ratio.max()).isLessThan(0.8 + 1e-9);
  }

  @Test
  void windowsAreTheMakers() {
    CaseTable t = CaseTable.read("cutting/speeds_feeds_small_endmills");
    // source: two tool makers' pages on small solid carbide end mills (A and B)
    window(t, "B", "aluminium 2024 6061 7075", named("aluminium 7075-T6"));
    window(t, "B", "brass yellow or leaded", named("brass"));
    window(t, "A", "steel to 35 HRC", named("mild steel"));
    window(t, "A", "cast iron soft", named("cast iron"));
    window(t, "A", "plastics", named("acrylic"));
    window(t, "B", "polycarbonate", named("polycarbonate"));
    assertThat(named("glass-epoxy laminate").speed().map(SpeedWindow::fastest))
        .hasValueSatisfying(v -> assertThat(v * 60).isCloseTo(150, within(1e-9)));
  }

  private static void window(CaseTable t, String page, String material, WorkMaterial m) {
    int row = 0;
    while (!t.rows().get(row).subList(0, 2).equals(List.of(page, material))) {
      row++;
    }
    SpeedWindow speed = m.speed().orElseThrow();
    assertThat(speed.slowest() * 60).isCloseTo(t.number(row, "vc_min_m_min"), within(1e-9));
    assertThat(speed.fastest() * 60).isCloseTo(t.number(row, "vc_max_m_min"), within(1e-9));
    LargestChip chip = m.chip().orElseThrow();
    for (String d : List.of("3.175", "6.35")) {
      double printed = t.number(row, "fz_mm_at_" + d);
      assertThat(1e3 * chip.at(Double.parseDouble(d) / 1e3))
          .isBetween(0.6 * printed, 1.03 * printed);
    }
  }

  @Test
  void aNameIsKnownOnce() {
    assertThat(Materials.all().stream().map(WorkMaterial::name))
        .doesNotHaveDuplicates()
        .hasSize(14);
    assertThat(Materials.named("unobtainium")).isEqualTo(Optional.empty());
  }
}
