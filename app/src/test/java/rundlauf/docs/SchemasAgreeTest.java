package rundlauf.docs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import rundlauf.bench.Bench;
import rundlauf.bench.BenchReader;
import rundlauf.bench.Cut;
import rundlauf.bench.Entry;
import rundlauf.bench.Job;
import rundlauf.bench.Trial;
import rundlauf.files.BenchFiles;
import rundlauf.files.TrialFiles;
import rundlauf.planning.JobTasks;
import rundlauf.quantity.Refused;
import rundlauf.readings.AxialReader;
import rundlauf.readings.GrowthReader;
import rundlauf.readings.InspectionReader;
import rundlauf.readings.LoadReader;
import rundlauf.readings.RunoutReader;
import rundlauf.readings.SpeedReader;

/**
 * The schemas refuse what the readers refuse: every file of the demo bench, spoiled at every place
 * in several ways, is judged by both.
 */
class SchemasAgreeTest {
  private static final Path DEMO = Pages.ROOT.resolve("demo").resolve("bench");
  private static final Path CUTS =
      Pages.ROOT.resolve("app/src/test/resources/rundlauf/cli/frozen/cuts");
  private static final Path JOBS = CUTS.resolveSibling("jobs");
  private static final Bench BENCH = BenchFiles.read(DEMO, "demo/bench");

  /** What a schema cannot know: names across documents, and how values fit one another. */
  private static final Set<String> BEYOND_A_SCHEMA =
      Set.of(
          "name-not-defined",
          "name-none-defined",
          "name-twice",
          "kind-unknown",
          "kind-not-yet",
          "count-without-mass",
          "span-reversed",
          "damping-out-of-range",
          "limits-of-error-fall",
          "norm-without-row",
          "material-unknown",
          "job-narrower-than-cutter",
          "job-deeper-than-flutes");

  @TestFactory
  Stream<DynamicTest> everySpoiledTrialIsJudgedAlike() {
    return BENCH.trials().stream()
        .map(
            trial ->
                dynamicTest(
                    trial.file(),
                    () ->
                        assertThat(
                                disagreements(
                                    trial.document(),
                                    "trial-" + trial.kind() + ".json",
                                    spoiled ->
                                        read(
                                            new Trial(
                                                trial.file(),
                                                spoiled,
                                                spoiled
                                                    .get("readings")
                                                    .flatMap(r -> trial.readings())))))
                            .isEmpty()));
  }

  private static void read(Trial trial) {
    Optional<Bench> bench = Optional.of(BENCH);
    switch (trial.kind()) {
      case "runout" -> RunoutReader.read(trial, bench);
      case "side-load" -> LoadReader.read(trial, bench);
      case "axial" -> AxialReader.read(trial, bench);
      case "growth" -> GrowthReader.read(trial, bench);
      case "speed" -> SpeedReader.read(trial, bench);
      default -> InspectionReader.read(trial, bench);
    }
  }

  private static List<String> disagreements(
      Entry.Fields document, String schema, Consumer<Entry.Fields> reader) {
    List<String> found = new ArrayList<>();
    for (Spoiled spoiled : Spoiled.of(document)) {
      String read = judged(reader, (Entry.Fields) spoiled.entry());
      List<String> complaints = Schemas.complaints(schema, json(spoiled.entry()));
      if (read.isEmpty() != complaints.isEmpty() && !BEYOND_A_SCHEMA.contains(read)) {
        found.add(spoiled.how() + ": reader " + read + ", schema " + complaints);
      }
    }
    return found;
  }

  private static String judged(Consumer<Entry.Fields> reader, Entry.Fields document) {
    try {
      reader.accept(document);
      return "";
    } catch (Refused refused) {
      return refused.saying().code();
    }
  }

  private static JsonNode json(Entry entry) {
    if (entry instanceof Entry.Fields fields) {
      ObjectNode node = JsonNodeFactory.instance.objectNode();
      fields.fields().forEach((name, value) -> node.set(name, json(value)));
      return node;
    }
    if (entry instanceof Entry.Items items) {
      ArrayNode node = JsonNodeFactory.instance.arrayNode();
      items.items().forEach(item -> node.add(json(item)));
      return node;
    }
    return JsonNodeFactory.instance.textNode(((Entry.Scalar) entry).text());
  }

  @TestFactory
  Stream<DynamicTest> theSpoiledBenchIsJudgedAlike() {
    return Stream.of(
        dynamicTest(
            "bench.yaml",
            () ->
                assertThat(
                        disagreements(
                            TrialFiles.parse(Pages.text(DEMO.resolve("bench.yaml")), "bench.yaml")
                                .document(),
                            "bench.json",
                            d -> BenchReader.read("bench.yaml", d, List.of())))
                    .isEmpty()));
  }

  @TestFactory
  Stream<DynamicTest> everySpoiledCutIsJudgedAlike() {
    return Pages.filesUnder(CUTS, ".yaml").stream()
        .map(
            cut ->
                dynamicTest(
                    cut.getFileName().toString(),
                    () ->
                        assertThat(
                                disagreements(
                                    TrialFiles.parse(Pages.text(cut), "cut.yaml").document(),
                                    "cut.json",
                                    d -> Cut.of("cut.yaml", d)))
                            .isEmpty()));
  }

  /** As a plan on its bench judges it. */
  @TestFactory
  Stream<DynamicTest> everySpoiledJobIsJudgedAlike() {
    Bench bench = BenchFiles.read(JOBS.resolve("bench"), "bench");
    return Stream.of("slot.yaml", "tight.yaml", "pocket.yaml")
        .map(
            job ->
                dynamicTest(
                    job,
                    () ->
                        assertThat(
                                disagreements(
                                    TrialFiles.parse(Pages.text(JOBS.resolve(job)), "job.yaml")
                                        .document(),
                                    "job.json",
                                    d -> JobTasks.of(Job.of("job.yaml", d), bench)))
                            .isEmpty()));
  }
}
