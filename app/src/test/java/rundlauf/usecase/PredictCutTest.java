package rundlauf.usecase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rundlauf.character.Origin;
import rundlauf.character.SetupCharacter;
import rundlauf.cutting.prediction.Prediction;
import rundlauf.files.DiskCuts;
import rundlauf.maths.Draws;
import rundlauf.maths.Work;
import rundlauf.quantity.Refused;
import rundlauf.quantity.Saying;
import rundlauf.render.Sentences;
import rundlauf.safety.Standing;

/** Cuts on the demo bench, and on setups described in the cut. All invented. */
class PredictCutTest {
  private static final Path DEMO = Path.of("..", "demo", "bench");
  private static final Draws DRAWS = new Draws(1, 400);
  private static final int STATES = 64;
  private static final String REST =
      """
      material: {name: brass}
      operation: slot
      speed: 12000 rpm
      feed-per-tooth: 6 um
      axial: 0.2 mm
      """;

  @TempDir private Path folder;

  private final PredictCut predictCut = new PredictCut(new DiskCuts(), Work.sequential());

  @Test
  void aMeasuredSetupComesWithItsTrials() throws IOException {
    Prediction prediction = predict(demo("Heron 3 mm", ""));
    SetupCharacter setup = prediction.task().setup();
    assertThat(setup.name()).isEqualTo("Heron 3 mm");
    assertThat(setup.eccentricity().origin()).isEqualTo(Origin.MEASURED);
    assertThat(setup.eccentricity().from())
        .extracting(Sentences::text)
        .containsExactly("measured in heron-3mm-runout.yaml");
    assertThat(setup.stiffnessX().from())
        .extracting(Sentences::text)
        .containsExactly(
            "the stiffness of heron-side-load.yaml, pushed 10 mm from the nut, is carried to 18 mm as"
                + " if the spindle tipped about the middle of its clamp, 38 mm behind the nut, give or"
                + " take half of that");
    assertThat(setup.standing()).contains(Standing.INSPECTED);
    assertThat(prediction.figures().at("force.peak.lateral").known()).isTrue();
  }

  @Test
  void anotherCutterOfTheBenchStandsInTheSetupAsFar() throws IOException {
    Prediction prediction = predict(demo("Heron 1/8 in", "cutter: 3 mm single-flute\n"));
    assertThat(prediction.task().cutter().name()).isEqualTo("3 mm single-flute");
    assertThat(prediction.task().cutter().stickout().si()).isCloseTo(0.018, within(1e-12));
    assertThat(prediction.task().setup().cautions())
        .extracting(Sentences::text)
        .noneMatch(text -> text.startsWith("The shank"));
  }

  @Test
  void aShankThatDoesNotFitIsSaidOfACutterDescribedInTheCut() throws IOException {
    String cutter =
        "cutter: {diameter: 2 mm, flutes: 2, helix: 30 deg, flute-length: 6 mm, shank: 4 mm,"
            + " modulus: 580 GPa, max-speed: 20000 rpm}\n";
    Prediction prediction = predict(demo("Heron 3 mm", cutter));
    assertThat(prediction.task().setup().cautions())
        .extracting(Sentences::text)
        .contains(
            "The shank of 4 mm is thicker than ER11 3 mm closes on (up to 3 mm): it does not belong"
                + " there. Use the holder of its size.",
            "The cutter of this cut is allowed 20000 rpm, and the spindle Heron turns up to 24000"
                + " rpm: keep below what the cutter's maker allows.");
  }

  @Test
  void aHeldSpindleIsSaid() throws IOException {
    SetupCharacter setup = predict(demo("Shrike sleeve", "")).task().setup();
    assertThat(setup.standing()).contains(Standing.HELD);
    assertThat(setup.because()).isNotEmpty();
    assertThat(setup.cautions())
        .extracting(Sentences::text)
        .contains("Shrike must not be powered: its last inspection holds it.");
  }

  @Test
  void aRefusedTrialIsACautionAndItsFigureMissing() throws IOException {
    Path bench = copied();
    Files.writeString(bench.resolve("trials/heron-3mm-runout.csv"), "angle_deg\n1\n");
    Prediction prediction = predict(cut("bench", "Heron 3 mm", ""));
    assertThat(prediction.task().setup().eccentricity().known()).isFalse();
    assertThat(prediction.task().setup().cautions())
        .extracting(Saying::code)
        .contains("trial-refused");
    assertThat(prediction.figures().at("force.peak.lateral").known()).isFalse();
    Files.writeString(bench.resolve("trials/wren-runout-owner.yaml"), "trial: runout\n");
    Prediction other =
        new PredictCut(new DiskCuts(), Work.sequential())
            .predict(cut("bench", "Dunlin 1/8 in", "").toString(), DRAWS, STATES)
            .prediction();
    assertThat(other.task().setup().cautions())
        .as("a trial of another spindle is no matter")
        .extracting(Saying::code)
        .doesNotContain("trial-refused");
  }

  @Test
  void aSetupTheBenchDoesNotHaveIsRefused() throws IOException {
    String file = demo("Heron 4 mm", "").toString();
    Refused refused =
        catchThrowableOfType(Refused.class, () -> predictCut.predict(file, DRAWS, STATES));
    assertThat(Sentences.refusal(refused).line())
        .contains("setup.name: the name \"Heron 4 mm\" is not defined in the bench");
  }

  @Test
  void aDescribedSetupRunsTrueUnlessSaidOtherwise() throws IOException {
    String text =
        REST
            + "cutter: {diameter: 2 mm, flutes: 2, helix: 30 deg, flute-length: 6 mm, stickout: 18"
            + " mm, shank: 3 mm, modulus: 580 GPa}\n"
            + "setup: {stiffness: 0.8 N/um}\n";
    Path file = folder.resolve("cut.yaml");
    Files.writeString(file, text);
    Prediction prediction = predict(file);
    assertThat(prediction.task().setup().standing()).isEmpty();
    assertThat(prediction.assumed().get("force.peak.lateral"))
        .extracting(Sentences::text)
        .contains("the cutter is taken to run true, for no eccentricity is given");
    assertThat(prediction.figures().at("deflection.wallError.plusY").known()).isTrue();
    assertThat(prediction.figures().at("power.available").known()).isFalse();
  }

  private Prediction predict(Path file) {
    return predictCut.predict(file.toString(), DRAWS, STATES).prediction();
  }

  private Path demo(String setup, String more) throws IOException {
    return cut(DEMO.toAbsolutePath().normalize().toString(), setup, more);
  }

  private Path cut(String bench, String setup, String more) throws IOException {
    Path file = folder.resolve("cut.yaml");
    Files.writeString(
        file, REST + more + "setup: {bench: \"" + bench + "\", name: \"" + setup + "\"}\n");
    return file;
  }

  private Path copied() throws IOException {
    Path to = folder.resolve("bench");
    try (Stream<Path> walk = Files.walk(DEMO)) {
      for (Path from : walk.toList()) {
        Path target = to.resolve(DEMO.relativize(from).toString());
        if (Files.isDirectory(from)) {
          Files.createDirectories(target);
        } else {
          Files.copy(from, target);
        }
      }
    }
    return to;
  }
}
