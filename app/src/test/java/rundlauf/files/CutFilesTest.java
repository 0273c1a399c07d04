package rundlauf.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rundlauf.bench.Cut;
import rundlauf.quantity.Refused;
import rundlauf.render.Sentences;

/** Cuts as they are typed, and where their benches lie. All invented. */
class CutFilesTest {
  private static final String REST =
      """
      material: {name: brass}
      operation: side-up
      speed: 18000 ± 100 rpm
      feed: 540 mm/min
      axial: 0.5 mm
      radial: 0.2 mm
      """;

  @TempDir private Path folder;

  @Test
  void aSetupDescribedInTheCut() {
    Cut cut =
        CutFiles.parse(
            REST
                + """
                title: a groove
                cutter: {diameter: 3 mm, flutes: 2}
                setup:
                  eccentricity: 12 ± 2 um
                  stiffness: {x: 0.8 N/um, y: 0.5 N/um}
                  speed: {max: 24000 rpm}
                  power: 400 W
                  modes: [{frequency: 900 Hz, damping: 3 %, stiffness: 0.8 N/um, direction: y}]
                """,
            "groove.yaml");
    assertThat(cut.title()).contains("a groove");
    assertThat(((Cut.FeedRate) cut.feed()).velocity().si()).isCloseTo(0.009, within(1e-12));
    assertThat(cut.speed().halfWidth()).isEqualTo(100.0 / 60);
    assertThat(((Cut.CutterGiven) cut.cutter().orElseThrow()).cutter().flutes()).hasValue(2);
    Cut.SetupGiven setup = (Cut.SetupGiven) cut.setup();
    assertThat(setup.eccentricity().orElseThrow().halfWidth()).isEqualTo(2e-6);
    assertThat(setup.stiffnessX().orElseThrow().si()).isEqualTo(0.8e6);
    assertThat(setup.stiffnessY().orElseThrow().si()).isEqualTo(0.5e6);
    assertThat(setup.tilt()).isEmpty();
    assertThat(setup.fastest().orElseThrow().si()).isEqualTo(400);
    assertThat(setup.slowest()).isEmpty();
    assertThat(setup.modes()).hasSize(1);
    assertThat(setup.modes().get(0).damping().si()).isEqualTo(0.03);
    assertThat(setup.modes().get(0).direction()).isEqualTo("y");
  }

  @Test
  void oneStiffnessIsThatOfBothDirections() {
    Cut cut =
        CutFiles.parse(REST + "cutter: {flutes: 2}\nsetup: {stiffness: 0.8 N/um}\n", "groove.yaml");
    Cut.SetupGiven setup = (Cut.SetupGiven) cut.setup();
    assertThat(setup.stiffnessX()).isEqualTo(setup.stiffnessY()).isPresent();
  }

  @Test
  void aBenchIsReachedFromTheCutsOwnFolder() throws IOException {
    write("bench/bench.yaml", "bench: The inlay corner (invented)\n");
    write("cuts/groove.yaml", REST + "setup: {bench: ../bench, name: Wren}\n");
    write(
        "cuts/whole.yaml", REST + "setup: {bench: " + folder.resolve("bench") + ", name: Wren}\n");
    var cuts = new DiskCuts();
    for (String name : new String[] {"cuts/groove.yaml", "cuts/whole.yaml"}) {
      var sourced = cuts.read(folder.resolve(name).toString());
      assertThat(sourced.bench().orElseThrow().name()).isEqualTo("The inlay corner (invented)");
      assertThat(sourced.cut().cutter()).isEmpty();
    }
  }

  @Test
  void aBenchThatIsNotThereIsToldWhereItWasTyped() throws IOException {
    write("groove.yaml", REST + "setup: {bench: ../bunch, name: Wren}\n");
    String file = folder.resolve("groove.yaml").toString();
    Refused refused = catchThrowableOfType(Refused.class, () -> new DiskCuts().read(file));
    assertThat(Sentences.refusal(refused).line())
        .isEqualTo(
            file
                + ":7: setup.bench: there is no bench at \"../bunch\" — write where the bench's"
                + " folder lies as seen from the folder of this file, or its whole path");
  }

  @Test
  void aFolderIsNoCut() {
    Refused refused = catchThrowableOfType(Refused.class, () -> CutFiles.read(folder, "cuts"));
    assertThat(Sentences.refusal(refused).line())
        .isEqualTo("cuts: this is a folder, and a cut is a file — name a cut's file");
  }

  private void write(String name, String text) throws IOException {
    Path path = folder.resolve(name);
    Files.createDirectories(path.getParent());
    Files.writeString(path, text);
  }
}
