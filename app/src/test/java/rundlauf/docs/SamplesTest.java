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
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import rundlauf.Main;

/** Every sample in the docs, and every file of the demo bench, keeps to its schema. */
class SamplesTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Path DEMO = Pages.ROOT.resolve("demo");
  private static final String[] ON_DEMO = {
    "--bench", DEMO.resolve("bench").toString(), "--draws", "64"
  };

  @TestFactory
  Stream<DynamicTest> everySampleOfThePagesKeepsToItsSchema() {
    return Pages.all().stream()
        .flatMap(page -> Fence.in(page).stream())
        .filter(fence -> List.of("yaml", "json").contains(fence.language()))
        .map(fence -> dynamicTest(fence.place(), () -> assertThat(complaints(fence)).isEmpty()));
  }

  @TestFactory
  Stream<DynamicTest> everyTrialOfThePagesIsReduced(@TempDir Path folder) {
    return Pages.all().stream()
        .flatMap(page -> Fence.in(page).stream())
        .filter(fence -> fence.info().equals("yaml") && fence.text().contains("trial: "))
        .map(
            fence ->
                dynamicTest(
                    fence.place(),
                    () -> assertThat(errors("reduce", fence.text(), folder)).isEmpty()));
  }

  @TestFactory
  Stream<DynamicTest> everyCutOfThePagesIsPredicted(@TempDir Path folder) {
    return Pages.all().stream()
        .flatMap(page -> Fence.in(page).stream())
        .filter(fence -> fence.info().equals("yaml") && fence.text().contains("operation: "))
        .map(
            fence ->
                dynamicTest(
                    fence.place(),
                    () -> assertThat(errors("predict", seenFrom(fence), folder)).isEmpty()));
  }

  @TestFactory
  Stream<DynamicTest> everyJobOfThePagesIsPlanned(@TempDir Path folder) {
    return Pages.all().stream()
        .flatMap(page -> Fence.in(page).stream())
        .filter(fence -> fence.info().equals("yaml"))
        .filter(fence -> TypedYaml.read(fence.text()).has("feature"))
        .map(
            fence ->
                dynamicTest(
                    fence.place(),
                    () -> assertThat(errors("plan", fence.text(), folder, ON_DEMO)).isEmpty()));
  }

  /** The benches of the pages lie beside them. */
  private static String seenFrom(Fence fence) {
    return fence.text().replace("../demo/", DEMO.toAbsolutePath() + "/");
  }

  private static String errors(String command, String text, Path folder, String... options)
      throws Exception {
    Path file = Files.writeString(folder.resolve("sample.yaml"), text);
    List<String> args = new ArrayList<>(List.of(command, file.toString()));
    args.addAll(List.of(options));
    var errors = new ByteArrayOutputStream();
    int ended = Main.run(new ByteArrayOutputStream(), errors, true, args.toArray(String[]::new));
    assertThat(ended).isIn(0, 4);
    return errors.toString(StandardCharsets.UTF_8);
  }

  @TestFactory
  Stream<DynamicTest> everyFileOfTheDemoBenchKeepsToItsSchema() {
    return Pages.filesUnder(DEMO.resolve("bench"), ".yaml").stream()
        .map(
            file ->
                dynamicTest(
                    DEMO.relativize(file).toString(), () -> assertThat(ofFile(file)).isEmpty()));
  }

  private static List<String> ofFile(Path file) {
    JsonNode document = TypedYaml.read(Pages.text(file));
    return Schemas.complaints(schemaOfTyped(document), document);
  }

  /** A block marked {@code yaml part-of=SCHEMA} shows some fields of a file; it may lack others. */
  private static List<String> complaints(Fence fence) throws Exception {
    if (fence.language().equals("json")) {
      JsonNode document = JSON.readTree(fence.text());
      return Schemas.complaints(schemaOfWritten(document), document);
    }
    JsonNode document = TypedYaml.read(fence.text());
    if (!fence.info().contains("part-of=")) {
      return Schemas.complaints(schemaOfTyped(document), document);
    }
    String schema = fence.info().replaceFirst(".*part-of=", "") + ".json";
    return document.properties().stream()
        .flatMap(
            field ->
                Schemas.complaints(schema + "#/properties/" + field.getKey(), field.getValue())
                    .stream())
        .toList();
  }

  private static String schemaOfTyped(JsonNode document) {
    if (document.has("operation")) {
      return "cut.json";
    }
    if (document.has("feature")) {
      return "job.json";
    }
    return document.has("bench")
        ? "bench.json"
        : "trial-" + document.path("trial").asText() + ".json";
  }

  private static String schemaOfWritten(JsonNode document) {
    if (document.has("error")) {
      return "refusal.json";
    }
    if (document.has("trial")) {
      return "result-" + document.path("trial").asText() + ".json";
    }
    return document.has("code")
        ? "parts/figure.json#/$defs/saying"
        : "parts/figure.json#/$defs/figure";
  }
}
