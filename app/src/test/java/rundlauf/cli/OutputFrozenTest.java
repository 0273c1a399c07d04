package rundlauf.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rundlauf.Ran;

/**
 * Our own past output of small invented trials, word by word. A change is judged by a person, and
 * then kept by a run with {@code -Drundlauf.refreeze=true}.
 */
class OutputFrozenTest {
  private static final Path FOLDER = Path.of("src/test/resources/rundlauf/cli/frozen");

  /** Numbers alike up to the last digits, which processors and JDKs round differently. */
  private static final double ALIKE = 1e-9;

  @ParameterizedTest
  @CsvSource({
    "reduce, runout.yaml, 0",
    "reduce, side-load.yaml, 0",
    "reduce, axial.yaml, 0",
    "reduce, growth.yaml, 0",
    "reduce, speed.yaml, 0",
    "reduce, inspection.yaml, 4",
    "compare, bench, 4",
    "predict, cuts/slot.yaml, 0",
    "predict, cuts/bone.yaml, 4",
    "predict, cuts/bench.yaml, 4",
    "plan, jobs/slot.yaml, 4",
    "plan, jobs/tight.yaml, 4"
  })
  void textIsAsItWas(String command, String input, int status) throws IOException {
    Ran ran = run(command, input);
    assertThat(ran.err()).isEmpty();
    assertThat(ran.out()).isEqualTo(kept(input + ".txt", ran.out()));
    assertThat(ran.status()).isEqualTo(status);
  }

  @ParameterizedTest
  @CsvSource({
    "reduce, runout.yaml",
    "reduce, side-load.yaml",
    "reduce, axial.yaml",
    "reduce, growth.yaml",
    "reduce, speed.yaml",
    "reduce, inspection.yaml",
    "compare, bench",
    "predict, cuts/slot.yaml",
    "predict, cuts/bone.yaml",
    "predict, cuts/bench.yaml",
    "plan, jobs/slot.yaml",
    "plan, jobs/tight.yaml"
  })
  void documentIsAsItWas(String command, String input) throws IOException {
    Ran ran = run(command, input, "--json");
    var json = new ObjectMapper();
    String pretty =
        json.writerWithDefaultPrettyPrinter().writeValueAsString(json.readTree(ran.out())) + "\n";
    same(json.readTree(ran.out()), json.readTree(kept(input + ".json", pretty)), "");
  }

  @Test
  void planIsAsItWas() throws IOException {
    String[] plan = {"plan", "board isolation", "--bench", "../demo/bench"};
    Ran text = Ran.of(plan);
    assertThat(text.out()).isEqualTo(kept("plan.txt", text.out()));
    var json = new ObjectMapper();
    JsonNode now = json.readTree(Ran.of(plan[0], plan[1], plan[2], plan[3], "--json").out());
    String pretty = json.writerWithDefaultPrettyPrinter().writeValueAsString(now) + "\n";
    same(now, json.readTree(kept("plan.json", pretty)), "");
  }

  private static Ran run(String command, String input, String... options) {
    List<String> args = new ArrayList<>(List.of(command, FOLDER.resolve(input).toString()));
    args.addAll(List.of(options));
    if (command.equals("plan")) {
      args.addAll(List.of("--bench", FOLDER.resolve("jobs/bench").toString()));
    }
    return Ran.of(args.toArray(String[]::new));
  }

  private static void same(JsonNode now, JsonNode before, String at) {
    assertThat(now.getNodeType()).as(at).isEqualTo(before.getNodeType());
    if (before.isNumber()) {
      double value = before.doubleValue();
      double alike = ALIKE * Math.max(Math.abs(value), 1e-3);
      assertThat(now.doubleValue()).as(at).isEqualTo(value, within(alike));
    } else if (before.isObject()) {
      assertThat(now.propertyStream().map(Map.Entry::getKey))
          .as(at)
          .containsExactlyElementsOf(before.propertyStream().map(Map.Entry::getKey).toList());
      before
          .properties()
          .forEach(e -> same(now.get(e.getKey()), e.getValue(), at + "/" + e.getKey()));
    } else if (before.isArray()) {
      assertThat(now.size()).as(at).isEqualTo(before.size());
      for (int i = 0; i < before.size(); i++) {
        same(now.get(i), before.get(i), at + "/" + i);
      }
    } else {
      assertThat(now).as(at).isEqualTo(before);
    }
  }

  private static String kept(String name, String now) throws IOException {
    Path file = FOLDER.resolve(name);
    if (Boolean.getBoolean("rundlauf.refreeze")) {
      Files.writeString(file, now);
    }
    return Files.readString(file);
  }
}
