package rundlauf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rundlauf.Ran;

class PredictCommandTest {
  private static final String CUT =
      """
      material: {name: aluminium 6082-T6}
      cutter: {kind: end-mill, diameter: 3 mm, flutes: 2, helix: 30 deg, flute-length: 9 mm, stickout: 20 mm, shank: 3 mm, modulus: 580 GPa, strength: 1500 MPa, edge-radius: 3 um}
      setup: {eccentricity: 6 um, first-tooth: 30 deg, stiffness: 8 N/um, speed: {min: 8000 rpm, max: 24000 rpm}, power: 400 W}
      operation: slot
      speed: 18000 rpm
      feed-per-tooth: 9 um
      axial: 0.2 mm
      """;

  @TempDir private Path folder;

  private String file(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text).toString();
  }

  @Test
  void aGoodCutEndsWellAndSaysWhatItDoes() throws IOException {
    Ran ran = Ran.of("predict", file("good.yaml", CUT));
    assertThat(ran.status()).isEqualTo(0);
    assertThat(ran.err()).isEmpty();
    assertThat(ran.out())
        .contains("predicted cut", "Chatter is not among", "tooth 1, thickest chip")
        .doesNotContain("DOES NOT HOLD");
  }

  @Test
  void aLimitThatIsPassedMustBeLookedAt() throws IOException {
    Ran ran = Ran.of("predict", file("fast.yaml", CUT.replace("speed: 18000", "speed: 30000")));
    assertThat(ran.status()).isEqualTo(4);
    assertThat(ran.out())
        .contains("Too much: speed (fastest usable) of 30000 rpm where at most 24000 rpm is");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          axial: 0.2 mm          | axial: 12 mm    | axial: a depth of 12 mm is more than the flutes' 9 mm — take it in several passes, or a cutter with longer flutes
          axial: 0.2 mm          | axial: 0 mm     | axial: "0 mm" is not more than zero, or its limits reach zero — write a value above zero
          feed-per-tooth: 9 um   | feed: 0 mm/min  | feed: "0 mm/min" is not more than zero, or its limits reach zero — write a value above zero
          feed-per-tooth: 9 um   | feed-per-tooth: 9 mm | feed-per-tooth: a feed of 18 mm for each turn is more than half of the cutter's 3 mm — check the unit: feed for each tooth is usually some 5 to 50 um
          operation: slot        | operation: slot#radial: 2 mm | radial: a slot is as wide as its cutter, and 2 mm is less than 3 mm — leave "radial:" out, or write "operation: side-up" or "side-down"
          operation: slot        | operation: side-up#radial: 4 mm | radial: a width of 4 mm is more than the cutter's 3 mm — write how much of the cutter is in the work, at most its diameter
          operation: slot        | operation: side-up | radial: a cut of the kind "side-up" needs its width — add "radial:", how far the cutter reaches into the work across the feed
          ', helix: 30 deg'      | ''              | cutter.helix: the cutter's helix is not given — add "helix:" to the cutter, or for a stickout to its setup
          helix: 30 deg          | helix: 85 deg   | cutter: a helix of 85 deg is steeper than any end mill's — write the angle between edge and axis, such as 30 deg
          stickout: 20 mm        | stickout: 5 mm  | cutter: flutes of 9 mm do not fit on a cutter that stands out 5 mm — measure both from the tip: the flutes to where they run out, the stickout to the nut's face
          kind: end-mill         | kind: drill     | cutter.kind: a drill cuts otherwise than an end mill, and its forces are not predicted yet — ask for an end mill; an engraving job can be planned with a V-tool by "plan"
          """)
  void aCutThatCannotBeIsRefused(String good, String bad, String sentence) throws IOException {
    String text = CUT.replace(good, bad.replace("#", "\n"));
    Ran ran = Ran.of("predict", file("bad.yaml", text));
    assertThat(ran.status()).isEqualTo(3);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err()).endsWith(": " + sentence + "\n").contains("bad.yaml");
  }

  @Test
  void anUnknownMaterialIsToldWithTheNearest() throws IOException {
    String text = CUT.replace("aluminium 6082-T6", "alumnium 6082-T6");
    Ran ran = Ran.of("predict", file("typo.yaml", text));
    assertThat(ran.status()).isEqualTo(3);
    assertThat(ran.err()).contains("alumnium 6082-T6").contains("aluminium 6082-T6");
  }

  @Test
  void oneLineForEachInputAndOfAllTheWorstEnding() throws IOException {
    String good = file("good.yaml", CUT);
    String bad = file("bad.yaml", CUT.replace("operation: slot", "operation: groove"));
    Ran ran = Ran.of("predict", "--json", good, bad, good);
    assertThat(ran.status()).isEqualTo(3);
    List<String> lines = ran.lines();
    assertThat(lines).hasSize(3);
    assertThat(lines.get(2)).isEqualTo(lines.get(0));
    JsonNode refused = new ObjectMapper().readTree(lines.get(1));
    assertThat(refused.path("error").path("field").asText()).isEqualTo("operation");
    assertThat(refused.path("error").path("line").asInt()).isEqualTo(4);
  }

  @Test
  void theSeedDecidesTheDigitsAndTooFewDrawsAreRefused() throws IOException {
    String open = file("open.yaml", CUT.replace("first-tooth: 30 deg, ", ""));
    Ran first = Ran.of("predict", "--json", "--seed", "5", open);
    assertThat(Ran.of("predict", "--json", "--seed", "5", open)).isEqualTo(first);
    assertThat(Ran.of("predict", "--json", "--seed", "6", open).out()).isNotEqualTo(first.out());
    Ran few = Ran.of("predict", "--draws", "10", open);
    assertThat(few.status()).isEqualTo(2);
    assertThat(few.err()).contains("was asked for 10 draws, and looks at 64 to 4000");
  }

  @Test
  void whatIsAssumedIsMarkedBesideTheNumber() throws IOException {
    Ran ran = Ran.of("predict", file("open.yaml", CUT.replace("first-tooth: 30 deg, ", "")));
    assertThat(ran.lines())
        .anyMatch(line -> line.contains("largest, sideways") && line.endsWith("*assumed*"))
        .anyMatch(line -> line.contains("nobody knows how the edges stand to the high spot"));
  }
}
