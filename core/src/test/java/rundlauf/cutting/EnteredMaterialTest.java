package rundlauf.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rundlauf.bench.Entry;
import rundlauf.bench.Material;
import rundlauf.bench.Typed;
import rundlauf.cutting.Coefficients.Kienzle;
import rundlauf.cutting.Coefficients.LinearEdge;
import rundlauf.maths.Draws;
import rundlauf.maths.Samples;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Refused;
import rundlauf.quantity.Saying;

/** Materials as typed; their numbers are invented. */
class EnteredMaterialTest {
  private static Entry.Fields edge(String ktc) {
    return Typed.fields(
        "Ktc", ktc, "Krc", "200 MPa", "Kac", "100 MPa", "Kte", "10 N/mm", "Kre", "12 N/mm", "Kae",
        "1 N/mm");
  }

  private static Material ours(String name, String ktc) {
    return Material.of(Typed.fields("name", name, "force", edge(ktc)));
  }

  @Test
  void sixCoefficientsAreRead() {
    WorkMaterial m =
        Materials.of(Typed.fields("name", "mine", "force", edge("800 MPa")), List.of());
    assertThat(m.coefficients()).isEqualTo(new LinearEdge(800e6, 200e6, 100e6, 10e3, 12e3, 1e3));
    assertThat(m.status()).isEqualTo(Status.ENTERED);
    assertThat(m.cautions())
        .containsExactly(Saying.of("coefficients-without-doubt", "material", Arg.of("mine")));
    assertThat(m.axialUnknown()).isEmpty();
    assertThat(m.speed()).isEmpty();
    assertThat(CoefficientDraws.of(m, new Draws(1, 200)))
        .allSatisfy(k -> assertThat(k).isEqualTo(m.coefficients()));
  }

  @Test
  void limitsAreDrawnEachByItself() {
    WorkMaterial m =
        Materials.of(Typed.fields("name", "mine", "force", edge("800 ± 100 MPa")), List.of());
    assertThat(m.cautions()).isEmpty();
    List<Coefficients> all = CoefficientDraws.of(m, new Draws(3, 4000));
    Samples ktc = Samples.generate(4000, i -> ((LinearEdge) all.get(i)).ktc() / 1e6);
    assertThat(ktc.min()).isBetween(700.0, 701.0);
    assertThat(ktc.max()).isBetween(899.0, 900.0);
    // source: JCGM 100:2008, 4.3.7: half-width over the root of 3
    assertThat(ktc.standardDeviation()).isCloseTo(100 / Math.sqrt(3), within(1.5));
    assertThat(all).allSatisfy(k -> assertThat(((LinearEdge) k).krc()).isEqualTo(200e6));
  }

  @Test
  void kienzlesLawIsReadAndDoubtedBelowItsTables() {
    Entry.Fields force =
        Typed.fields("kc11", "700 ± 70 MPa", "mc", "0.25", "kr-ratio", "0.4", "ka-ratio", "0.2");
    WorkMaterial m = Materials.of(Typed.fields("name", "mine", "force", force), List.of());
    assertThat(m.coefficients()).isEqualTo(new Kienzle(700e6, 0.25, 0.4, 0.2, true));
    assertThat(m.cautions().stream().map(Saying::code)).containsExactly("chip-below-tables");
    List<Coefficients> all = CoefficientDraws.of(m, new Draws(3, 2000));
    for (Coefficients k : all) {
      double kc = ((Kienzle) k).kc11() * Math.pow(0.1, -((Kienzle) k).mc());
      assertThat(kc / Math.pow(0.1, -0.25) / 1e6).isBetween(630 - 1e-6, 770 + 1e-6);
    }
  }

  @Test
  void whatIsLeftOutOfTheAxialForceIsNotKnown() {
    Entry.Fields power = Typed.fields("kc11", "700 MPa", "mc", "0.25", "kr-ratio", "0.4");
    Entry.Fields pair =
        Typed.fields("Ktc", "800 MPa", "Krc", "0 MPa", "Kte", "0 N/mm", "Kre", "0 N/mm");
    for (Entry.Fields force : List.of(power, pair)) {
      WorkMaterial m = Materials.of(Typed.fields("name", "mine", "force", force), List.of());
      assertThat(m.coefficients().axialKnown()).isFalse();
      assertThat(m.axialUnknown())
          .contains(Saying.of("axial-coefficients-unknown", "force", Arg.of("mine")));
    }
  }

  @Test
  void ownWindowsStandBeforeTheLibrarys() {
    Entry.Fields typed =
        Typed.fields(
            "name",
            "brass",
            "cutting-speed",
            Typed.fields("min", "50 m/min", "max", "90 m/min"),
            "largest-chip",
            "12 um");
    WorkMaterial m = Materials.of(typed, List.of());
    assertThat(m.coefficients()).isEqualTo(Materials.named("brass").orElseThrow().coefficients());
    assertThat(m.speed().orElseThrow().fastest()).isCloseTo(1.5, within(1e-12));
    assertThat(m.speed().orElseThrow().status()).isEqualTo(Status.ENTERED);
    assertThat(m.chip().orElseThrow().at(3e-3)).isCloseTo(12e-6, within(1e-15));
  }

  @Test
  void theBenchsOwnOverridesTheLibrary() {
    List<Material> own = List.of(ours("horn", "60 MPa"), ours("brass", "900 MPa"));
    WorkMaterial brass = Materials.of(Typed.text("material", "brass"), own);
    assertThat(((LinearEdge) brass.coefficients()).ktc()).isEqualTo(900e6);
    assertThat(Materials.of(Typed.fields("name", "horn"), own).status()).isEqualTo(Status.ENTERED);
    WorkMaterial bone = Materials.of(Typed.fields("name", "bone"), own);
    assertThat(bone).isEqualTo(Materials.named("bone").orElseThrow());
    Entry.Fields inline = Typed.fields("name", "brass", "force", edge("1 GPa"));
    assertThat(((LinearEdge) Materials.of(inline, own).coefficients()).ktc()).isEqualTo(1e9);
  }

  @Test
  void anUnknownNameIsRefusedWithTheNearest() {
    Refused refused =
        refused(Typed.fields("name", "aluminum 6061"), List.of(ours("horn", "1 GPa")));
    assertThat(refused.saying().code()).isEqualTo("material-unknown");
    assertThat(refused.place().field()).isEqualTo("name");
    assertThat(((Arg.Word) refused.saying().args().get(1)).text())
        .startsWith("aluminium 6061-T6, aluminium 6082-T6, ")
        .contains("horn");
  }

  @ParameterizedTest
  @CsvSource({
    "Ktc, 800 MPa, kc11, 700 MPa, force-of-two-kinds",
    "Ktc, 800 MPa, Kac, 100 MPa, axial-pair-broken",
    "Ktc, 800 MPa, Kae, 1 N/mm, axial-pair-broken",
    "Ktc, 800 MPa, Krc, 100 MPa, field-missing",
    "Ktc, -800 MPa, Krc, 100 MPa, value-not-positive",
    "Ktc, 800 N/mm, Krc, 100 MPa, unit-of-another-kind",
    "kc11, 800 MPa, mc, 1.2, exponent-out-of-range",
    "kc11, 800 MPa, mc, 0.1 ± 0.2, exponent-out-of-range",
    "kc11, 800 MPa, mc, 0.2, field-missing",
    "ktc, 800 MPa, mc, 0.2, field-unknown"
  })
  void whatCannotBeReadIsRefused(
      String first, String value, String second, String other, String code) {
    Entry.Fields force = Typed.fields(first, value, second, other);
    Refused refused = refused(Typed.fields("name", "mine", "force", force), List.of());
    assertThat(refused.saying().code()).isEqualTo(code);
  }

  private static Refused refused(Entry typed, List<Material> own) {
    return catchThrowableOfType(Refused.class, () -> Materials.of(typed, own));
  }
}
