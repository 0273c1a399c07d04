package rundlauf.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rundlauf.Ran;

/** What {@code predict} gives for invented cuts. */
class PredictOutputTest {
  private static final Path CUTS = Path.of("src/test/resources/rundlauf/cli/frozen/cuts");
  private static final String SLOT = CUTS.resolve("slot.yaml").toString();
  private static final String BONE = CUTS.resolve("bone.yaml").toString();

  @TempDir private Path folder;

  private static List<JsonNode> documents(Ran ran) throws Exception {
    List<JsonNode> all = new ArrayList<>();
    for (String line : ran.lines()) {
      all.add(new ObjectMapper().readTree(line));
    }
    return all;
  }

  private static JsonNode document(String cut) throws Exception {
    return documents(Ran.of("predict", "--json", cut)).get(0);
  }

  private static double value(JsonNode figure) {
    return figure.path("value").asDouble();
  }

  @Test
  void documentsStandInTheOrderOfTheInputsARefusalInItsPlace() throws Exception {
    String missing = CUTS.resolve("missing.yaml").toString();
    Ran ran = Ran.of("predict", "--json", BONE, missing, SLOT);
    List<JsonNode> all = documents(ran);
    assertThat(all.stream().map(d -> d.path("file").asText())).containsExactly(BONE, missing, SLOT);
    assertThat(all.get(1).has("error")).isTrue();
    assertThat(ran.status()).isEqualTo(3);
  }

  @Test
  void figuresNestByTheirPaths() throws Exception {
    JsonNode slot = document(SLOT);
    assertThat(slot.path("force").path("mean").path("x").path("unit").asText()).isEqualTo("N");
    assertThat(slot.path("deflection").path("wallError").has("plusY")).isTrue();
    assertThat(document(BONE).path("deflection").path("wallError").path("why").asText())
        .contains("stiffness");
    assertThat(slot.path("chip").path("perTooth")).hasSize(2);
    double shares = 0;
    for (JsonNode tooth : slot.path("chip").path("perTooth")) {
      shares +=
          tooth.path("share").isNumber()
              ? tooth.path("share").asDouble()
              : value(tooth.path("share"));
    }
    assertThat(shares).isCloseTo(1, within(1e-6));
    assertThat(slot.path("stability").path("limit").path("why").asText()).contains("examined");
  }

  @Test
  void theRigidAnswerStandsBesideOnlyWhereTheNoseGivesWay() throws Exception {
    JsonNode slot = document(SLOT);
    assertThat(value(slot.path("rigid").path("force").path("peak").path("lateral")))
        .isNotEqualTo(value(slot.path("force").path("peak").path("lateral")));
    assertThat(document(BONE).has("rigid")).isFalse();
  }

  @Test
  void aJudgedLimitIsKeptWhereItsMarginIsNotNegative() throws Exception {
    JsonNode bone = document(BONE);
    int judged = 0;
    for (JsonNode limit : bone.path("limits")) {
      if (limit.path("probability").isNull()) {
        assertThat(limit.path("why").asText()).isNotEmpty();
        assertThat(limit.path("holds").isNull()).isTrue();
        continue;
      }
      judged++;
      double margin = value(limit.path("margin"));
      assertThat(Math.abs(margin))
          .isCloseTo(
              Math.abs(value(limit.path("allowed")) - value(limit.path("value"))),
              within(1e-9 * Math.abs(value(limit.path("allowed")))));
      assertThat(margin < 0).isEqualTo(limit.path("limit").asText().equals("chip-thickest"));
    }
    assertThat(bone.path("covers")).hasSize(judged);
  }

  @Test
  void whatIsAssumedStandsBesideEveryNumberItTouchesAndNoOther() throws Exception {
    JsonNode bone = document(BONE);
    assertThat(bone.path("force").path("peak").path("lateral").path("assumed").path(0).asText())
        .contains("high spot");
    assertThat(bone.path("kinematics").path("feed").has("assumed")).isFalse();
    assertThat(document(SLOT).findValues("assumed")).isEmpty();
    assertThat(Ran.of("predict", BONE).out()).contains("(3.2 to 24.4) *assumed*");
  }

  @Test
  void theStiffnessIsAssumedBeneathTheSoftAnswerAndNotBeneathTheRigidOne() throws Exception {
    Path bench = Path.of("../demo/bench").toAbsolutePath();
    String cut =
        """
        material: aluminium 6061-T6
        setup: {bench: %s, name: Heron 3 mm}
        operation: slot
        speed: 18000 rpm
        feed-per-tooth: 8 um
        axial: 0.5 mm
        """
            .formatted(bench);
    JsonNode found = document(Files.writeString(folder.resolve("cut.yaml"), cut).toString());
    String carried = "is carried to 18 mm";
    assertThat(assumed(found, "force")).anyMatch(s -> s.contains(carried));
    assertThat(assumed(found.path("rigid"), "force"))
        .noneMatch(s -> s.contains(carried))
        .anyMatch(s -> s.contains("high spot"));
  }

  private static List<String> assumed(JsonNode of, String group) {
    List<String> all = new ArrayList<>();
    of.path(group).path("peak").path("lateral").path("assumed").forEach(s -> all.add(s.asText()));
    return all;
  }

  @Test
  void aLimitThatFailsMustBeLookedAt() {
    assertThat(Ran.of("predict", SLOT).status()).isZero();
    Ran bone = Ran.of("predict", BONE);
    assertThat(bone.status()).isEqualTo(4);
    assertThat(bone.out())
        .containsSubsequence("LOOK AT THIS FIRST", "Too much: thickest chip", ": NO\n");
  }

  @ParameterizedTest
  @ValueSource(strings = {"slot", "bone", "bench"})
  void aPageFitsEightyColumns(String cut) {
    Ran ran = Ran.of("predict", CUTS.resolve(cut + ".yaml").toString());
    assertThat(ran.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
  }

  @Test
  void theSameSeedGivesTheSameDigitsAndAnotherOthers() {
    String usual = Ran.of("predict", "--json", SLOT).out();
    assertThat(Ran.of("predict", "--json", SLOT).out()).isEqualTo(usual);
    assertThat(Ran.of("predict", "--json", "--seed", "7", SLOT).out()).isNotEqualTo(usual);
    assertThat(Ran.of("predict", "--json", "--draws", "256", SLOT).out()).isNotEqualTo(usual);
  }

  @ParameterizedTest
  @ValueSource(strings = {"63", "4001"})
  void drawsOutsideAreWronglyCalled(String draws) {
    assertThat(Ran.of("predict", "--draws", draws, SLOT).status()).isEqualTo(2);
  }
}
