package rundlauf.docs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import rundlauf.Main;

/** Every line that the program writes as JSON keeps to its schema. */
class ResultsTest {
  private static final Path TRIALS = Pages.ROOT.resolve("demo/bench/trials");
  private static final Path CUTS =
      Pages.ROOT.resolve("app/src/test/resources/rundlauf/cli/frozen/cuts");
  private static final Path JOBS = CUTS.resolveSibling("jobs");

  @TestFactory
  Stream<DynamicTest> everyResultOfTheDemoKeepsToItsSchema() {
    return Pages.filesUnder(TRIALS, ".yaml").stream()
        .map(
            trial ->
                dynamicTest(
                    trial.getFileName().toString(),
                    () -> {
                      JsonNode line = written("reduce", trial);
                      assertThat(line.path("error").path("text").asText()).isEmpty();
                      String schema = "result-" + line.path("trial").asText() + ".json";
                      assertThat(Schemas.complaints(schema, line)).isEmpty();
                    }));
  }

  @TestFactory
  Stream<DynamicTest> everyPredictionKeepsToItsSchema() {
    return Pages.filesUnder(CUTS, ".yaml").stream()
        .map(
            cut ->
                dynamicTest(
                    cut.getFileName().toString(),
                    () -> {
                      JsonNode line = written("predict", cut);
                      assertThat(line.path("error").path("text").asText()).isEmpty();
                      assertThat(Schemas.complaints("prediction.json", line)).isEmpty();
                    }));
  }

  @TestFactory
  Stream<DynamicTest> everyPlanKeepsToItsSchema() {
    return Stream.of("slot.yaml", "tight.yaml", "pin hole")
        .map(
            job ->
                dynamicTest(
                    job,
                    () -> {
                      Path file = JOBS.resolve(job);
                      String named = Files.exists(file) ? file.toString() : job;
                      JsonNode line =
                          written("plan", "--bench", JOBS.resolve("bench").toString(), named);
                      assertThat(line.path("error").path("text").asText()).isEmpty();
                      assertThat(Schemas.complaints("plan.json", line)).isEmpty();
                    }));
  }

  @Test
  void aRefusalKeepsToItsSchema(@TempDir Path folder) throws Exception {
    Path broken =
        Files.writeString(folder.resolve("broken.yaml"), "trial: runout\nindicator: {}\n");
    JsonNode line = written("reduce", broken);
    assertThat(line.path("error").path("line").asInt()).isEqualTo(2);
    assertThat(Schemas.complaints("refusal.json", line)).isEmpty();
  }

  private static JsonNode written(String command, Path trial) throws Exception {
    return written(command, trial.toString());
  }

  private static JsonNode written(String... args) throws Exception {
    var out = new ByteArrayOutputStream();
    List<String> all = new ArrayList<>(List.of(args));
    all.add("--json");
    Main.run(out, new ByteArrayOutputStream(), false, all.toArray(String[]::new));
    List<String> lines = out.toString(StandardCharsets.UTF_8).lines().toList();
    assertThat(lines).hasSize(1);
    return new ObjectMapper().readTree(lines.get(0));
  }
}
