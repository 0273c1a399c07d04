package rundlauf.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static rundlauf.bench.Typed.fields;
import static rundlauf.bench.Typed.items;
import static rundlauf.bench.Typed.text;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A bench with everything in it, invented. */
class BenchReaderTest {
  private static Entry.Fields everything() {
    return fields(
        "bench", "The inlay corner",
        "machine", fields("feed", "2000 mm/min"),
        "spindles",
            items(
                fields(
                    "name",
                    "Heron",
                    "drive",
                    "induction",
                    "rotation",
                    "cw",
                    "input",
                    "800 W",
                    "efficiency",
                    "75 %",
                    "supply",
                    fields("voltage", "230 V", "kind", "ac"),
                    "control",
                    "drive",
                    "label-speed",
                    fields("min", "6000 rpm", "max", "24000 rpm"),
                    "nose",
                    fields("to-mount", "48 mm", "clamped-at", "neck"),
                    "notes",
                    "old")),
        "holders",
            items(
                fields(
                    "name",
                    "ER11 3 mm",
                    "kind",
                    "collet",
                    "system",
                    "ER11",
                    "bore",
                    "3 mm",
                    "range",
                    fields("min", "2.5 mm", "max", "3 mm"),
                    "material",
                    "steel",
                    "class",
                    "2",
                    "max-speed",
                    "30000 rpm")),
        "cutters",
            items(
                fields(
                    "name",
                    "1 mm two-flute",
                    "kind",
                    "end-mill",
                    "diameter",
                    "1 mm",
                    "flutes",
                    "2",
                    "helix",
                    "-30 deg",
                    "flute-length",
                    "4 mm",
                    "stickout",
                    "18 mm",
                    "shank",
                    "3 mm",
                    "modulus",
                    "580 GPa",
                    "strength",
                    "2500 MPa",
                    "edge-radius",
                    "3 um",
                    "max-speed",
                    "50000 rpm")),
        "indicators",
            items(fields("name", "plunger dial", "division", "0.01 mm", "limit-of-error", "8 um")),
        "rigs",
            items(
                fields(
                    "name",
                    "brass lever",
                    "load-arm",
                    "180 ± 0.5 mm",
                    "contact-arm",
                    "60 ± 0.5 mm",
                    "mass",
                    "750 ± 1 g")),
        "materials",
            items(
                fields(
                    "name",
                    "my brass",
                    "force",
                    fields("kc11", "700 MPa", "mc", "0.2", "kr-ratio", "0.5"),
                    "cutting-speed",
                    fields("min", "60 m/min", "max", "240 m/min"),
                    "largest-chip",
                    "20 um",
                    "notes",
                    "from a test piece")),
        "setups",
            items(
                fields(
                    "name",
                    "Heron 1 mm",
                    "spindle",
                    "Heron",
                    "holder",
                    "ER11 3 mm",
                    "cutter",
                    "1 mm two-flute",
                    "stickout",
                    "18 mm")),
        "jobs",
            items(
                fields(
                    "name",
                    "pearl pocket",
                    "material",
                    fields("name", "mother of pearl"),
                    "cutter",
                    items(text("cutter", "1 mm two-flute")),
                    "feature",
                    "pocket",
                    "depth",
                    "1.2 mm",
                    "width",
                    "4 mm",
                    "length",
                    "120 mm",
                    "tolerance",
                    "0.04 mm",
                    "wall-share",
                    "0.5",
                    "finish",
                    "2 um",
                    "workholding",
                    fields("in-plane", "20 N", "lift", "10 N"))));
  }

  private static Bench read(Entry.Fields document) {
    return BenchReader.read("bench.yaml", document, List.of());
  }

  @Test
  void everythingIsUnderstood() {
    Bench bench = read(everything());
    assertThat(bench.name()).isEqualTo("The inlay corner");
    assertThat(bench.feed().orElseThrow().si()).isCloseTo(2.0 / 60, within(1e-15));
    Spindle heron = bench.spindle("Heron").orElseThrow();
    assertThat(heron.drive()).hasValue("induction");
    assertThat(heron.efficiency().orElseThrow().si()).isEqualTo(0.75);
    assertThat(heron.supply().orElseThrow().kind()).hasValue("ac");
    assertThat(heron.labelSpeed().orElseThrow().max().si()).isEqualTo(400);
    assertThat(heron.nose().orElseThrow().toMount().orElseThrow().si()).isEqualTo(0.048);
    Holder holder = bench.holder("ER11 3 mm").orElseThrow();
    assertThat(holder.grade()).hasValue("2");
    assertThat(holder.range().orElseThrow().min().si()).isEqualTo(0.0025);
    Cutter cutter = bench.cutter("1 mm two-flute").orElseThrow();
    assertThat(cutter.flutes()).hasValue(2);
    assertThat(cutter.helix().orElseThrow().si()).isCloseTo(-Math.PI / 6, within(1e-15));
    assertThat(cutter.modulus().orElseThrow().si()).isEqualTo(580e9);
    assertThat(
            bench.indicator("plunger dial").orElseThrow().limitOfError().orElseThrow().range().si())
        .isCloseTo(8e-6, within(1e-20));
    assertThat(bench.rig("brass lever").orElseThrow().arms().orElseThrow().ratio())
        .isCloseTo(3, within(1e-15));
    Material brass = bench.material("my brass").orElseThrow();
    assertThat(bench.materials()).containsExactly(brass);
    assertThat(((Material.ChipPower) brass.force().orElseThrow()).kc11().si()).isEqualTo(700e6);
    assertThat(brass.cuttingSpeed().orElseThrow().max().si()).isCloseTo(4, within(1e-12));
    assertThat(brass.largestChip().orElseThrow().si()).isCloseTo(20e-6, within(1e-15));
    assertThat(brass.notes()).contains("from a test piece");
    Setup setup = bench.setup("Heron 1 mm").orElseThrow();
    assertThat(setup.cutter()).hasValue("1 mm two-flute");
    Job job = bench.job("pearl pocket").orElseThrow();
    assertThat(job.cutters()).containsExactly("1 mm two-flute");
    assertThat(job.workholding().orElseThrow().lift().orElseThrow().si()).isEqualTo(10);
    assertThat(job.wallShare().orElseThrow().si()).isEqualTo(0.5);
  }

  @Test
  void aBareBenchIsOne() {
    Bench bench = read(fields("bench", "Empty", "spindles", items(), "setups", ""));
    assertThat(bench.spindles()).isEmpty();
    assertThat(bench.feed()).isEmpty();
    assertThat(bench.spindle("Heron")).isEmpty();
  }

  @Test
  void aNameUsedAndNotDefinedIsRefused() {
    for (String field : List.of("spindle", "holder", "cutter")) {
      Entry.Fields setup =
          field.equals("spindle")
              ? fields("name", "s", "spindle", "Heran")
              : fields("name", "s", "spindle", "Heron", field, "another");
      Entry.Fields document =
          fields(
              "bench", "b",
              "spindles", items(fields("name", "Heron")),
              "holders", items(fields("name", "ER11")),
              "cutters", items(fields("name", "1 mm")),
              "setups", items(setup));
      assertThatThrownBy(() -> read(document)).hasMessageStartingWith("name-not-defined");
    }
    Entry.Fields job = fields("bench", "b", "jobs", items(fields("name", "j", "cutter", "1 mm")));
    assertThatThrownBy(() -> read(job)).hasMessageStartingWith("name-none-defined");
  }

  @Test
  void aSetupNeedsItsSpindle() {
    Entry.Fields document = fields("bench", "b", "setups", items(fields("name", "s")));
    assertThatThrownBy(() -> read(document)).hasMessageStartingWith("field-missing");
  }
}
