package rundlauf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rundlauf.Ran;
import rundlauf.docs.Schemas;

class PlanCommandTest {
  private static final String BENCH = "../demo/bench";
  private static final String JOB =
      """
      name: saddle slot
      material: {name: bone}
      cutter: 1 mm two-flute
      feature: slot
      width: 1 mm
      depth: 1 mm
      length: 60 mm
      tolerance: 0.08 mm
      """;

  @TempDir private Path folder;

  private Ran plan(String text, String... more) throws IOException {
    String file = Files.writeString(folder.resolve("job.yaml"), text).toString();
    String[] args = {"plan", file, "--bench", BENCH};
    return Ran.of(Stream.of(args, more).flatMap(Arrays::stream).toArray(String[]::new));
  }

  @Test
  void aJobOfAFileIsPlannedOnEverySetupHeldOnesLast() throws IOException {
    Ran ran = plan(JOB, "--json");
    JsonNode found = new ObjectMapper().readTree(ran.out());
    assertThat(Schemas.complaints("plan.json", found)).isEmpty();
    JsonNode setups = found.path("setups");
    assertThat(setups).hasSize(8);
    JsonNode last = setups.get(7);
    assertThat(last.path("setup").asText()).isEqualTo("Shrike sleeve");
    assertThat(last.path("hold").asBoolean()).isTrue();
    assertThat(last.path("rank").isNull()).isTrue();
    JsonNode first = setups.get(0);
    assertThat(first.path("rank").asInt()).isEqualTo(1);
    assertThat(found.path("recommended").asText()).isEqualTo(first.path("setup").asText());
    assertThat(first.path("probability").asDouble()).isGreaterThanOrEqualTo(0.95);
    assertThat(found.path("cautions").findValuesAsText("code")).contains("chatter-not-examined");
    assertThat(ran.status()).isEqualTo(4); // one is on hold
  }

  @ParameterizedTest
  @ValueSource(strings = {"brass pin hole", "board isolation"})
  void aJobOfTheBenchKeepsToTheSchema(String job) throws IOException {
    Ran ran = Ran.of("plan", job, "--bench", BENCH, "--json");
    assertThat(Schemas.complaints("plan.json", new ObjectMapper().readTree(ran.out()))).isEmpty();
  }

  @Test
  void whatIsNotPredictedIsSaidOnceAndNotGuessed() {
    Ran ran = Ran.of("plan", "brass pin hole", "--bench", BENCH);
    assertThat(ran.status()).isEqualTo(4);
    assertThat(ran.out())
        .contains("NONE WILL DO", "ON HOLD: do not power", "Drilling is not predicted yet");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          material: {name: bone} | ''                | material: it is not said what is cut
          tolerance: 0.08 mm     | tolerance: 0 mm   | tolerance: "0 mm" is not more than zero
          width: 1 mm            | width: 0.5 mm     | width:
          depth: 1 mm            | depth: 9 mm       | depth: 9 mm is deeper than the flutes
          feature: slot          | ''                | feature: it is not said what is to be made
          cutter: 1 mm two-flute | cutter: 2 mm      | cutter: the name "2 mm" is not defined
          length: 60 mm          | lenght: 60 mm     | lenght: "lenght" is not a field of this part
          """)
  void aJobThatCannotBeIsRefused(String good, String bad, String sentence) throws IOException {
    Ran ran = plan(JOB.replace(good, bad));
    assertThat(ran.status()).isEqualTo(3);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err()).contains("job.yaml").contains(": " + sentence).contains(" — ");
  }

  @Test
  void anUnknownJobIsToldWithTheNearest() {
    Ran ran = Ran.of("plan", "nut slot in bon", "--bench", BENCH);
    assertThat(ran.status()).isEqualTo(3);
    assertThat(ran.err()).contains("nut slot in bon").contains("nut slot in bone");
  }

  @Test
  void withoutABenchItIsAWrongCall() {
    Ran ran = Ran.of("plan", "nut slot in bone");
    assertThat(ran.status()).isEqualTo(2);
    assertThat(ran.err()).contains("--bench");
  }
}
