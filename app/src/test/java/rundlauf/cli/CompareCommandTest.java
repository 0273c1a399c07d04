package rundlauf.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rundlauf.Ran;
import rundlauf.docs.Schemas;

/** What {@code compare} gives for a small bench: two spindles, one dial, all invented. */
class CompareCommandTest {
  @TempDir Path folder;

  @BeforeEach
  void writeBench() {
    Sample.write(
        folder,
        "bench.yaml",
        """
        bench: Two spindles (invented)
        spindles: [{name: Heron}, {name: Wren}]
        cutters: [{name: two-flute, shank: 3 mm}]
        indicators: [{name: dial, division: 0.01 mm, limit-of-error: 8 um}]
        setups:
          - {name: Heron 3 mm, spindle: Heron, cutter: two-flute}
          - {name: Wren 3 mm, spindle: Wren, cutter: two-flute}
        """);
    Sample.write(folder, "trials/heron.yaml", runout("Heron 3 mm", 1));
    Sample.write(folder, "trials/wren.yaml", runout("Wren 3 mm", 4));
  }

  /** The sample on the bench's dial, its readings so many times as large. */
  private static String runout(String setup, int times) {
    StringBuilder text = new StringBuilder();
    for (String line : Sample.RUNOUT.lines().toList()) {
      int cut = line.lastIndexOf(',') + 1;
      boolean row = line.strip().startsWith("5,");
      text.append(
              row
                  ? line.substring(0, cut) + times * Integer.parseInt(line.substring(cut).strip())
                  : line)
          .append('\n');
    }
    return text.toString()
        .replace("{division: 0.01 mm, limit-of-error: 8 um}", "dial")
        .replace("gauge:", "setup: " + setup + "\ngauge:");
  }

  private JsonNode compared(int status) throws Exception {
    Ran ran = Ran.of("compare", "--json", folder.toString());
    assertThat(ran.err()).isEmpty();
    assertThat(ran.lines()).hasSize(1);
    assertThat(ran.status()).isEqualTo(status);
    JsonNode document = new ObjectMapper().readTree(ran.out());
    assertThat(Schemas.complaints("comparison.json", document)).isEmpty();
    return document;
  }

  private static JsonNode difference(JsonNode document, String figure) {
    for (JsonNode one : document.at("/pairs/0/differences")) {
      if (one.get("figure").textValue().equals(figure)) {
        return one;
      }
    }
    throw new AssertionError("no difference of " + figure + " in " + document);
  }

  @Test
  void aFourTimesLargerSwingIsWorse() throws Exception {
    JsonNode tir = difference(compared(4), "stations.tir");
    assertThat(tir.get("station_mm").doubleValue()).isEqualTo(5, within(1e-9));
    assertThat(tir.get("verdict").textValue()).isEqualTo("better");
    assertThat(tir.get("better").textValue()).isEqualTo("Heron 3 mm");
    assertThat(tir.get("aSmaller").doubleValue()).isGreaterThan(0.99);
    assertThat(tir.at("/difference/value").doubleValue()).isEqualTo(-180, within(10.0));
  }

  /** Both were read with one dial: its limit of error is no doubt of the difference. */
  @Test
  void theDialsErrorCancelsInTheDifference() throws Exception {
    JsonNode tir = difference(compared(4), "stations.tir");
    double apart = Math.hypot(tir.at("/a/u").doubleValue(), tir.at("/b/u").doubleValue());
    assertThat(tir.at("/difference/u").doubleValue()).isLessThan(0.8 * apart);
  }

  @Test
  void whatWasNotMeasuredIsMissingWithWhy() throws Exception {
    JsonNode stiffness = compared(4).at("/setups/0/figures/stiffness");
    assertThat(stiffness.get("value").isNull()).isTrue();
    assertThat(stiffness.get("why").textValue())
        .isEqualTo("No side-load trial of this setup was reduced.");
  }

  @Test
  void aSpindleThatWasNotInspectedIsCautioned() throws Exception {
    JsonNode document = compared(4);
    assertThat(document.at("/setups/0/standing").textValue()).isEqualTo("not-inspected");
    assertThat(document.at("/setups/0/hold").booleanValue()).isFalse();
    assertThat(document.at("/cautions/0/code").textValue()).isEqualTo("spindle-not-inspected");
    assertThat(document.at("/cautions/0/about").textValue()).isEqualTo("Heron");
  }

  @Test
  void aFaultHoldsTheSpindle() throws Exception {
    Sample.write(
        folder,
        "trials/inspection.yaml",
        """
        trial: inspection
        setup: Wren 3 mm
        items:
          - {item: strain-relief, state: fault, note: the lead turns in its gland}
        """);
    JsonNode document = compared(4);
    assertThat(document.at("/setups/1/standing").textValue()).isEqualTo("held");
    assertThat(document.at("/setups/1/hold").booleanValue()).isTrue();
    assertThat(document.at("/setups/1/because")).isNotEmpty();
    assertThat(document.at("/cautions/0/code").textValue()).isEqualTo("spindle-held");
  }

  @Test
  void aRefusedTrialIsToldOfAndStopsNothing() throws Exception {
    Sample.write(folder, "trials/wren.yaml", runout("Wren 3 mm", 4).replace("dial", "lost dial"));
    JsonNode document = compared(3);
    assertThat(document.at("/refused/0/file").textValue()).endsWith("wren.yaml");
    assertThat(document.at("/refused/0/error/code").textValue()).isEqualTo("name-not-defined");
    assertThat(document.at("/setups/0/figures/nextClamping.tir/value").isNumber()).isTrue();
  }

  @Test
  void anotherNutTorqueIsNotFair() throws Exception {
    Sample.write(
        folder,
        "trials/wren.yaml",
        runout("Wren 3 mm", 4).replace("gauge:", "conditions: {nut: 20 N m}\ngauge:"));
    JsonNode tir = difference(compared(4), "stations.tir");
    assertThat(tir.get("fair").booleanValue()).isFalse();
    assertThat(tir.get("verdict").textValue()).isEqualTo("not-fair");
    assertThat(tir.get("better").isNull()).isTrue();
    assertThat(tir.at("/because/0/about").textValue()).isEqualTo("nut");
  }

  @Test
  void theTextIsNarrowAndSaysWhatIsBetter() {
    Ran ran = Ran.of("compare", folder.toString());
    assertThat(ran.out())
        .startsWith("Two spindles (invented): 2 setups side by side\n")
        .contains("LOOK AT THIS FIRST\n  - Heron has not been inspected")
        .contains("  - Heron 3 mm is better than Wren 3 mm: less by");
    assertThat(ran.lines()).allMatch(line -> line.length() <= 80);
    assertThat(ran.status()).isEqualTo(4);
  }

  @Test
  void whatIsNoBenchIsRefused() {
    Ran ran = Ran.of("compare", folder.resolve("trials").toString());
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err().lines()).hasSize(1);
    assertThat(ran.status()).isEqualTo(3);
    assertThat(List.of(ran.err().split(" — "))).hasSize(2);
  }
}
