package rundlauf.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rundlauf.Ran;

/** What {@code plan} gives for an invented bench: one spindle good, one not inspected, one held. */
class PlanOutputTest {
  private static final Path JOBS = Path.of("src/test/resources/rundlauf/cli/frozen/jobs");
  private static final String BENCH = JOBS.resolve("bench").toString();
  private static final String SLOT = JOBS.resolve("slot.yaml").toString();
  private static final String TIGHT = JOBS.resolve("tight.yaml").toString();

  private static Ran plan(String... more) {
    List<String> args = new ArrayList<>(List.of("plan", "--bench", BENCH));
    args.addAll(List.of(more));
    return Ran.of(args.toArray(String[]::new));
  }

  private static JsonNode document(String job) throws Exception {
    Ran ran = plan("--json", job);
    assertThat(ran.err()).isEmpty();
    assertThat(ran.lines()).hasSize(1);
    return new ObjectMapper().readTree(ran.out());
  }

  private static List<JsonNode> setups(JsonNode plan) {
    return StreamSupport.stream(plan.path("setups").spliterator(), false).toList();
  }

  @Test
  void theInspectedOneIsTakenAndTheHeldOneIsLastWithItsReason() throws Exception {
    JsonNode plan = document(SLOT);
    assertThat(plan.path("recommended").asText()).isEqualTo("Heron 3 mm");
    assertThat(setups(plan).stream().map(s -> s.path("setup").asText()))
        .containsExactly("Heron 3 mm", "Wren 3 mm", "Shrike 3 mm");
    assertThat(setups(plan).get(0).path("rank").asInt()).isEqualTo(1);
    assertThat(setups(plan).get(1).path("rank").isNull()).isTrue();
    JsonNode held = setups(plan).get(2);
    assertThat(held.path("hold").asBoolean()).isTrue();
    assertThat(held.path("rank").isNull()).isTrue();
    assertThat(held.path("because").path(0).path("text").asText()).contains("protective earth");
  }

  @Test
  void theCutIsGivenInShopUnitsThatAgree() throws Exception {
    JsonNode best = setups(document(SLOT)).get(0);
    JsonNode cut = best.path("cut");
    assertThat(cut.path("speed").path("unit").asText()).isEqualTo("rpm");
    assertThat(cut.path("feed").path("unit").asText()).isEqualTo("mm/min");
    assertThat(best.path("time").path("unit").asText()).isEqualTo("min");
    // source: common practice, no source: feed = feed per tooth times teeth times speed
    double feed = value(cut, "speed") * 2 * value(cut, "feedPerTooth") / 1000;
    assertThat(value(cut, "feed")).isCloseTo(feed, within(1e-9 * feed));
    // source: common practice, no source: removal rate = width times depth times feed
    double removal = value(cut, "radial") * value(cut, "axial") * value(cut, "feed");
    assertThat(value(best, "removalRate")).isCloseTo(removal, within(1e-9 * removal));
    double deep = value(cut, "axial") * cut.path("passes").path("deep").asInt();
    assertThat(deep).isCloseTo(1, within(1e-9));
    double minutes = cut.path("passes").path("deep").asInt() * 6 / value(cut, "feed");
    assertThat(value(best, "time")).isCloseTo(minutes, within(1e-9 * minutes));
  }

  private static double value(JsonNode of, String figure) {
    return of.path(figure).path("value").asDouble();
  }

  @Test
  void whatIsAssumedStandsBesideTheWallError() throws Exception {
    JsonNode best = setups(document(SLOT)).get(0);
    assertThat(best.path("wallError").path("assumed").toString()).contains("heron-side-load.yaml");
    assertThat(best.path("removalRate").has("assumed")).isFalse();
  }

  @Test
  void whereNoneWillDoTheNearestMissSaysWhatFails() throws Exception {
    JsonNode plan = document(TIGHT);
    assertThat(plan.path("recommended").isNull()).isTrue();
    JsonNode nearest = setups(plan).get(0);
    assertThat(nearest.path("feasible").asBoolean()).isFalse();
    assertThat(nearest.path("boundBy").asText()).isEqualTo("wall-error");
    assertThat(plan.path("advice").path(0).path("code").asText()).isEqualTo("nearest-miss");
    assertThat(plan(TIGHT).out())
        .contains("NONE WILL DO")
        .contains("The nearest miss, on Heron 3 mm: not a cut to make")
        .contains(": NO\n");
  }

  @Test
  void drillingSaysOnceThatItIsNotPredicted() {
    Ran ran = plan("pin hole");
    assertThat(ran.status()).isEqualTo(4);
    assertThat(ran.out()).startsWith("Job: pin hole\nNONE WILL DO: no cut could be tried");
    assertThat(ran.out())
        .contains("Heron 3 mm, Wren 3 mm: cannot be tried.")
        .contains("ON HOLD: do not power. A fault was found:");
  }

  @Test
  void thePageSaysWhichToTakeBeforeAnythingElse() {
    Ran ran = plan(SLOT);
    assertThat(ran.status()).isEqualTo(4);
    assertThat(ran.out()).startsWith("Job: nut slot in bone (invented)\nTake Heron 3 mm.\n");
    assertThat(ran.out())
        .containsSubsequence(
            "The dust of bone harms", "ON HOLD: do not power.", "Take this cut, on Heron 3 mm");
    assertThat(ran.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
  }

  @ParameterizedTest
  @CsvSource({
    "no such job, job: there is no job and no file called, 3",
    "bench/bench.yaml, this is a bench and a job is asked for, 3",
    "../cuts/slot.yaml, this is a cut and a job is asked for, 3"
  })
  void whatIsNoJobIsRefused(String job, String says, int status) {
    String named = job.endsWith(".yaml") ? JOBS.resolve(job).toString() : job;
    Ran ran = plan(named);
    assertThat(ran.status()).isEqualTo(status);
    assertThat(ran.err().replace(",", "")).contains(says.replace("job: ", ""));
  }

  @ParameterizedTest
  @ValueSource(strings = {"63", "4001", "-1"})
  void drawsOutsideAreWronglyCalled(String draws) {
    Ran ran = plan(SLOT, "--draws", draws);
    assertThat(ran.status()).isEqualTo(2);
    assertThat(ran.err()).contains("64 to 4000");
  }

  @Test
  void withoutABenchItIsWronglyCalled() {
    assertThat(Ran.of("plan", SLOT).status()).isEqualTo(2);
  }
}
