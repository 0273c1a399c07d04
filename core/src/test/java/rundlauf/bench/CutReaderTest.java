package rundlauf.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rundlauf.quantity.Refused;

class CutReaderTest {
  private final Map<String, Object> fields = new LinkedHashMap<>();
  private final Map<String, Object> setup = new LinkedHashMap<>();

  CutReaderTest() {
    fields.put("title", "A slot");
    fields.put("material", "brass");
    fields.put("cutter", Typed.fields("diameter", "3 mm", "flutes", "2"));
    fields.put("operation", "slot");
    fields.put("speed", "18000 rpm");
    fields.put("feed-per-tooth", "15 um");
    fields.put("axial", "0.5 mm");
    setup.put("eccentricity", "12 ± 2 um");
    setup.put("first-tooth", "30 deg");
    setup.put("tilt", "0.2 um/mm");
    setup.put("tilt-angle", "10 deg");
    setup.put("stiffness", Typed.fields("x", "0.8 N/um", "y", "0.5 N/um"));
    setup.put("speed", Typed.fields("min", "8000 rpm", "max", "24000 rpm"));
    setup.put("power", "400 W");
    setup.put("modes", Typed.items(mode("0.03", "x")));
  }

  private static Entry.Fields mode(String damping, String direction) {
    return Typed.fields(
        "frequency", "900 Hz", "damping", damping, "stiffness", "0.8 N/um", "direction", direction);
  }

  private Cut read() {
    fields.putIfAbsent("setup", typed(setup));
    return Cut.of("cut.yaml", typed(fields));
  }

  private static Entry.Fields typed(Map<String, Object> map) {
    return Typed.fields(
        map.entrySet().stream().flatMap(e -> Stream.of(e.getKey(), e.getValue())).toArray());
  }

  private void put(Map<String, Object> map, String field, String value) {
    if (value.isEmpty()) {
      map.remove(field);
    } else {
      map.put(field, value);
    }
  }

  @Test
  void everythingThatWasTypedIsRead() {
    Cut cut = read();
    assertThat(cut.title()).contains("A slot");
    assertThat(((Cut.FeedPerTooth) cut.feed()).length().si()).isCloseTo(15e-6, within(1e-18));
    assertThat(cut.radial()).isEmpty();
    Cut.SetupGiven given = (Cut.SetupGiven) cut.setup();
    assertThat(given.eccentricity().orElseThrow().halfWidth()).isCloseTo(2e-6, within(1e-18));
    assertThat(given.stiffnessX().orElseThrow().si()).isCloseTo(0.8e6, within(1e-6));
    assertThat(given.stiffnessY().orElseThrow().si()).isCloseTo(0.5e6, within(1e-6));
    assertThat(given.fastest().orElseThrow().si()).isCloseTo(400, within(1e-9));
    assertThat(given.powerAt()).isEmpty();
    assertThat(given.modes()).hasSize(1);
    assertThat(given.modes().get(0).damping().si()).isEqualTo(0.03);
  }

  @Test
  void aSetupOfABenchNeedsNoCutterAndMayNameOne() {
    fields.put("setup", Typed.fields("bench", "../shop", "name", "Heron 3 mm"));
    fields.put("cutter", "1 mm two-flute");
    Cut named = read();
    assertThat(named.setup()).isEqualTo(new Cut.SetupNamed("../shop", "Heron 3 mm"));
    assertThat(named.cutter()).contains(new Cut.CutterNamed("1 mm two-flute"));
    fields.remove("cutter");
    assertThat(read().cutter()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "material, '', cut-without-material",
    "cutter, '', cut-without-cutter",
    "cutter, some mill, cutter-name-without-bench",
    "operation, '', cut-without-operation",
    "operation, side-up, radial-missing",
    "operation, groove, word-unknown",
    "speed, '', field-missing",
    "axial, '', field-missing",
    "axial, 0 mm, value-not-positive",
    "feed-per-tooth, '', cut-without-feed",
    "feed, 500 mm/min, feed-said-twice",
    "depth, 1 mm, field-unknown"
  })
  void aCutThatCannotBeIsRefused(String field, String value, String code) {
    put(fields, field, value);
    refuses(code);
  }

  @ParameterizedTest
  @CsvSource({
    "bench, ../shop, setup-of-two-kinds",
    "tilt, '', angle-without-tilt",
    "tilt, 0.2, unit-missing",
    "eccentricity, -1 um, value-negative",
    "stiffness, 0 N/um, value-not-positive",
    "power, '', accepted",
    "power-at, 20000 rpm, accepted"
  })
  void aSetupThatCannotBeIsRefused(String field, String value, String code) {
    put(setup, field, value);
    if (code.equals("accepted")) {
      assertThat(read().setup()).isInstanceOf(Cut.SetupGiven.class);
    } else {
      refuses(code);
    }
  }

  @Test
  void whatDoesNotFitTogetherIsRefused() {
    setup.remove("power");
    setup.put("power-at", "20000 rpm");
    refuses("speed-without-power");
    setup.remove("power-at");
    setup.put("power", "400 W");
    setup.remove("speed");
    fields.remove("setup");
    refuses("power-without-speed");
    setup.put("speed", Typed.fields("min", "9000 rpm", "max", "8000 rpm"));
    fields.remove("setup");
    refuses("span-reversed");
    setup.put("speed", Typed.fields("max", "8000 rpm"));
    setup.put("modes", Typed.items(mode("1.2", "x")));
    fields.remove("setup");
    refuses("damping-out-of-range");
    setup.put("modes", Typed.items(mode("0.1", "")));
    fields.remove("setup");
    refuses("mode-without-direction");
    fields.put("setup", Typed.fields("name", "Heron"));
    refuses("setup-name-without-bench");
  }

  private void refuses(String code) {
    assertThatThrownBy(this::read)
        .isInstanceOfSatisfying(
            Refused.class, refused -> assertThat(refused.saying().code()).isEqualTo(code));
  }
}
