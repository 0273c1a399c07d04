package rundlauf.docs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import rundlauf.bench.Entry;
import rundlauf.cutting.Coefficients.Kienzle;
import rundlauf.cutting.Coefficients.LinearEdge;
import rundlauf.cutting.Materials;
import rundlauf.cutting.SmallestChip;
import rundlauf.cutting.Status;
import rundlauf.cutting.WorkMaterial;
import rundlauf.cutting.surface.Rubbing;
import rundlauf.quantity.Format;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;
import rundlauf.render.Sentences;

/** The page of materials holds the library as it is, and what is said of a material reads well. */
class MaterialsPageTest {
  private static final String PAGE =
      Pages.text(Pages.ROOT.resolve("docs").resolve("methods").resolve("materials.md"));

  private static String status(Status status) {
    return Sentences.term("status-" + status.name().toLowerCase(Locale.ROOT));
  }

  private static String number(double value) {
    return Format.number(value);
  }

  private static String coefficients(WorkMaterial material) {
    if (material.coefficients() instanceof LinearEdge e) {
      String axial =
          e.axialKnown() ? number(e.kac() / 1e6) + " / " + number(e.kae() / 1e3) : "not known";
      return String.join(
          " | ",
          number(e.ktc() / 1e6) + " / " + number(e.kte() / 1e3),
          number(e.krc() / 1e6) + " / " + number(e.kre() / 1e3),
          axial);
    }
    Kienzle k = (Kienzle) material.coefficients();
    return String.join(
        " | ",
        "kc1.1 " + number(k.kc11() / 1e6) + ", mc " + number(k.mc()),
        number(k.radialRatio()) + " Ft",
        "not known");
  }

  private static String row(WorkMaterial m) {
    var speed = m.speed().orElseThrow();
    var chip = m.chip().orElseThrow();
    SmallestChip least = m.smallestChip();
    return String.join(
        " | ",
        "| " + m.name(),
        status(m.status()),
        coefficients(m),
        String.format(Locale.ROOT, "%.2f (× %.1f)", m.doubt().common(), m.doubt().factor()),
        number(speed.slowest() * 60)
            + "–"
            + number(speed.fastest() * 60)
            + " "
            + status(speed.status()),
        number(chip.perDiameter()) + " D " + status(chip.status()),
        number(least.low()) + "–" + number(least.high()) + " " + status(least.status()) + " |");
  }

  @Test
  void holdsEveryMaterialOfTheLibraryAsItIs() {
    List<String> rows = Materials.all().stream().map(MaterialsPageTest::row).toList();
    String table = String.join("\n", rows) + "\n";
    assertThat(PAGE).contains(table);
    assertThat(
            PAGE.lines().filter(line -> line.matches("\\| .* \\| (published|memory|guess) \\| .*")))
        .hasSameSizeAs(rows);
  }

  @Test
  void namesEverySource() {
    TreeSet<String> sources = new TreeSet<>();
    for (WorkMaterial m : Materials.all()) {
      sources.add(m.source());
      sources.add(m.speed().orElseThrow().source());
      sources.add(m.chip().orElseThrow().source());
      sources.add(m.smallestChip().source());
    }
    assertThat(sources).hasSize(9);
    String unwrapped = PAGE.replaceAll("\\s+", " ");
    assertThat(sources).allSatisfy(code -> assertThat(unwrapped).contains(Sentences.term(code)));
  }

  @Test
  void everyCautionHasItsSentence() {
    for (WorkMaterial m : Materials.all()) {
      assertThat(m.cautions()).allSatisfy(s -> assertThat(Sentences.text(s)).endsWith("."));
    }
    assertThat(Sentences.text(Materials.named("bone").orElseThrow().cautions().get(0)))
        .isEqualTo(
            "For bone no trustworthy force coefficients are published. These are a guess from its"
                + " hardness and may be off by a factor of 3 either way. Cut a test piece and use"
                + " what it says.");
    assertThat(Sentences.text(Materials.named("mild steel").orElseThrow().cautions().get(1)))
        .startsWith(
            "Kienzle's law is known for chips of 0.1 mm and more. Below that it is carried on");
  }

  @Test
  void rubbingIsSaidInFull() {
    assertThat(Rubbing.said(1e-6, 3e-6, SmallestChip.USUAL).map(Sentences::text))
        .contains(
            "The thinnest chip of a tooth that cuts is 1 µm. The least that an edge with a radius"
                + " of 3 µm lifts lies between 0.42 µm and 1.29 µm, so that tooth may rub. Feed"
                + " faster, or take out runout.");
  }

  @Test
  void anUnknownNameIsSaidInFull() {
    Entry typed = new Entry.Scalar("ebonny", false, new Place("a.yaml", 3, 11, "material"));
    Refused refused = catchThrowableOfType(Refused.class, () -> Materials.of(typed, List.of()));
    assertThat(Sentences.refusal(refused).line())
        .isEqualTo(
            "a.yaml:3: material: \"ebonny\" is not a material that is known here — correct the"
                + " name, or give the material's own coefficients under \"force:\"; known, nearest"
                + " first: ebony, bone, brass, acetal, acrylic, hardwood, cast iron, mild steel,"
                + " polycarbonate, mother of pearl, aluminium 6061-T6, aluminium 6082-T6, aluminium"
                + " 7075-T6, glass-epoxy laminate");
  }
}
