package rundlauf.docs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rundlauf.quantity.Dimension;
import rundlauf.quantity.Unit;

/** The schemas themselves: valid, strict, and of one mind with the units of core. */
class SchemasTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String FIGURE = "parts/figure.json#/$defs/figure";

  @TestFactory
  Stream<DynamicTest> everySchemaKeepsToItsDraft() {
    return Schemas.files().stream()
        .map(
            file ->
                dynamicTest(
                    Schemas.FOLDER.relativize(file).toString(),
                    () -> {
                      JsonNode schema = JSON.readTree(file.toFile());
                      // source: JSON Schema draft 2020-12, its meta-schema, by
                      // json-schema-validator
                      assertThat(Schemas.complaintsAboutSchema(schema)).isEmpty();
                      assertThat(schema.path("$schema").asText())
                          .isEqualTo("https://json-schema.org/draft/2020-12/schema");
                    }));
  }

  private static Map<Dimension, String> quantities() {
    Map<Dimension, String> names = new LinkedHashMap<>();
    names.put(Dimension.LENGTH, "length");
    names.put(Dimension.ANGLE, "angle");
    names.put(Dimension.MASS, "mass");
    names.put(Dimension.FORCE, "force");
    names.put(Dimension.FREQUENCY, "speed");
    names.put(Dimension.VELOCITY, "feed");
    names.put(Dimension.POWER, "power");
    names.put(Dimension.VOLTAGE, "voltage");
    names.put(Dimension.PRESSURE, "pressure");
    names.put(Dimension.STIFFNESS, "stiffness");
    names.put(Dimension.ACCELERATION, "acceleration");
    names.put(Dimension.TEMPERATURE, "temperature");
    names.put(Dimension.TIME, "time");
    return names;
  }

  @TestFactory
  Stream<DynamicTest> aQuantityTakesTheUnitsOfItsDimensionAndNoOthers() {
    return quantities().entrySet().stream()
        .map(e -> dynamicTest(e.getValue(), () -> takesItsUnits(e.getKey(), e.getValue())));
  }

  private static void takesItsUnits(Dimension dimension, String name) {
    for (Unit unit : Unit.values()) {
      List<String> complaints = quantity(name, "12 " + unit.symbol());
      assertThat(complaints.isEmpty()).as(unit.symbol()).isEqualTo(unit.dimension() == dimension);
    }
  }

  private static List<String> quantity(String name, String text) {
    return Schemas.complaints("parts/quantities.json#/$defs/" + name, TextNode.valueOf(text));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "0.01 mm",
        "60 ± 0.5 mm",
        "60 mm ± 20 um",
        "1/8 in",
        "0,125 mm",
        "8 um",
        "8 µm",
        "1e-3 m"
      })
  void aLengthIsRead(String text) {
    assertThat(quantity("length", text)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "mm", "0.01", "0.01 rpm", "NaN mm", "1.2.3 mm", "5 mm 3"})
  void whatIsNoLengthIsRefused(String text) {
    assertThat(quantity("length", text)).isNotEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{'value': 48.7, 'unit': 'um', 'u': 1.9, 'low': 45.1, 'high': 52.4, 'level': 0.95, 'dof': 9}",
        "{'value': 48.7, 'unit': 'um', 'u': 0, 'low': 48.7, 'high': 48.7, 'level': 0.95}",
        "{'value': null, 'unit': 'um', 'why': 'one station cannot tell it'}"
      })
  void aFigureIsKnownOrSaysWhyNot(String text) throws Exception {
    assertThat(Schemas.complaints(FIGURE, JSON.readTree(text.replace('\'', '"')))).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{'value': 48.7, 'unit': 'um'}",
        "{'value': null, 'unit': 'um'}",
        "{'value': null, 'unit': 'um', 'why': ''}",
        "{'value': 0, 'unit': 'um', 'why': 'cannot be had'}",
        "{'value': 48.7, 'unit': 'um', 'u': -1, 'low': 45.1, 'high': 52.4, 'level': 0.95}",
        "48.7"
      })
  void aBareNumberIsNoFigure(String text) throws Exception {
    assertThat(Schemas.complaints(FIGURE, JSON.readTree(text.replace('\'', '"')))).isNotEmpty();
  }

  @Test
  void anUnknownFieldIsRefused() {
    assertThat(
            Schemas.complaints(
                "trial-runout.json",
                TypedYaml.read("{trial: runout, indicator: dial, readings: a.csv, gage: {}}")))
        .anyMatch(complaint -> complaint.contains("gage"));
  }
}
