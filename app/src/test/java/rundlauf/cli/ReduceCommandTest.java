package rundlauf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rundlauf.Ran;

/** What {@code reduce} gives, in which order, and how it ends. */
class ReduceCommandTest {
  @TempDir Path folder;

  private static JsonNode read(String line) throws Exception {
    return new ObjectMapper().readTree(line);
  }

  @Test
  void aGoodAndARefusedInputGiveTwoLines() throws Exception {
    String good = Sample.write(folder, "good.yaml", Sample.RUNOUT);
    String bad = Sample.write(folder, "bad.yaml", Sample.RUNOUT.replace("0.01 mm", "0.01 mn"));
    Ran ran = Ran.of("reduce", "--json", good, bad);
    assertThat(ran.status()).isEqualTo(3);
    assertThat(ran.err()).isEmpty();
    assertThat(ran.lines()).hasSize(2);
    assertThat(read(ran.lines().get(0)).get("file").textValue()).isEqualTo(good);
    JsonNode refused = read(ran.lines().get(1));
    assertThat(refused.get("file").textValue()).isEqualTo(bad);
    assertThat(refused.at("/error/code").textValue()).isEqualTo("unit-unknown");
    assertThat(refused.at("/error/line").intValue()).isEqualTo(4);
    assertThat(refused.at("/error/field").textValue()).isEqualTo("indicator.division");
    assertThat(refused.at("/error/remedy").textValue()).isNotEmpty();
  }

  @Test
  void linesStandInTheOrderOfTheInputs() throws Exception {
    String one = Sample.write(folder, "one.yaml", Sample.RUNOUT);
    String two = Sample.write(folder, "two.yaml", Sample.SPEED);
    String gone = folder.resolve("gone.yaml").toString();
    Ran ran = Ran.of("reduce", two, gone, one, two, "--json");
    List<String> files = List.of(two, gone, one, two);
    assertThat(ran.lines()).hasSameSizeAs(files);
    for (int i = 0; i < files.size(); i++) {
      assertThat(read(ran.lines().get(i)).get("file").textValue()).isEqualTo(files.get(i));
    }
    assertThat(ran.lines().get(0)).isEqualTo(ran.lines().get(3));
  }

  @Test
  void aRefusalIsASentenceOnTheOtherStream() {
    String bad = Sample.write(folder, "bad.yaml", Sample.RUNOUT.replace("0.01 mm", "0.01 mn"));
    Ran ran = Ran.of("reduce", bad);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err()).startsWith(bad + ":4: indicator.division: ").contains(" — ");
    assertThat(ran.err().lines()).hasSize(1);
    assertThat(ran.status()).isEqualTo(3);
  }

  // What is cautioned: the last reading is far from the first, at the same angle.
  @ParameterizedTest
  @CsvSource({"good, 0", "cautioned, 4", "good cautioned, 4", "cautioned gone good, 3", "gone, 3"})
  void ofSeveralEndingsTheWorstCounts(String inputs, int status) {
    Sample.write(folder, "good.yaml", Sample.SPEED);
    Sample.write(folder, "cautioned.yaml", Sample.RUNOUT.replace("360, 10", "360, 60"));
    Stream<String> files =
        Arrays.stream(inputs.split(" ")).map(name -> folder.resolve(name + ".yaml").toString());
    Ran ran = Ran.of(Stream.concat(Stream.of("reduce"), files).toArray(String[]::new));
    assertThat(ran.status()).isEqualTo(status);
  }

  @Test
  void theSeedDecidesTheDigits() {
    String file = Sample.write(folder, "one.yaml", Sample.RUNOUT);
    String once = Ran.of("reduce", "--json", file).out();
    assertThat(Ran.of("reduce", "--json", file).out()).isEqualTo(once);
    assertThat(Ran.of("reduce", "--json", file, "--seed", "1").out()).isNotEqualTo(once);
    assertThat(Ran.of("reduce", "--json", file, "--draws", "500").out()).isNotEqualTo(once);
  }

  @Test
  void aTrialOfABenchTakesItsNamesFromThere() {
    Sample.write(
        folder,
        "bench.yaml",
        """
        bench: invented
        spindles: [{name: Heron}]
        holders: [{name: collet, range: {min: 2.5 mm, max: 3 mm}}]
        cutters: [{name: fat, shank: 1/8 in}]
        indicators: [{name: dial, division: 0.01 mm, limit-of-error: 8 um}]
        setups: [{name: forced, spindle: Heron, holder: collet, cutter: fat}]
        """);
    String text =
        Sample.RUNOUT
            .replace("{division: 0.01 mm, limit-of-error: 8 um}", "dial")
            .replace("gauge:", "setup: forced\ngauge:");
    Ran ran = Ran.of("reduce", Sample.write(folder, "trials/a.yaml", text), "--json");
    assertThat(ran.out())
        .contains("\"code\":\"shank-too-thick\"")
        .contains("\"code\":\"pin-other-than-shank\"")
        .contains("\"cause\":\"indicator/dial/limit-of-error\"");
    assertThat(ran.status()).isEqualTo(4);
  }

  @Test
  void everyTrialOfAHeldSpindleSaysSo() {
    Sample.write(
        folder,
        "bench.yaml",
        """
        bench: invented
        spindles: [{name: Heron}, {name: Wren}]
        setups: [{name: one, spindle: Heron}, {name: two, spindle: Heron}, {name: other, spindle: Wren}]
        """);
    Sample.write(
        folder,
        "trials/inspection.yaml",
        """
        trial: inspection
        setup: one
        items: [{item: strain-relief, state: fault}]
        """);
    Sample.write(folder, "trials/broken.yaml", "trial: inspection\nitems: [");
    String held = Sample.SPEED.replace("wanted:", "setup: two\nwanted:");
    String free = Sample.SPEED.replace("wanted:", "setup: other\nwanted:");
    Ran onHeld = Ran.of("reduce", Sample.write(folder, "trials/a.yaml", held), "--json");
    assertThat(onHeld.out()).contains("\"code\":\"spindle-held\"");
    assertThat(onHeld.status()).isEqualTo(4);
    Ran onOther = Ran.of("reduce", Sample.write(folder, "trials/b.yaml", free), "--json");
    assertThat(onOther.out()).doesNotContain("spindle-held");
    assertThat(onOther.status()).isZero();
  }
}
