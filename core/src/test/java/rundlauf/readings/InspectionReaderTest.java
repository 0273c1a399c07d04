package rundlauf.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static rundlauf.bench.Typed.fields;
import static rundlauf.bench.Typed.items;
import static rundlauf.bench.Typed.trial;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rundlauf.quantity.Refused;

class InspectionReaderTest {
  @Test
  void itemsWithTheirStates() {
    InspectionReadings readings =
        InspectionReader.read(
            trial(
                fields(
                    "trial",
                    "inspection",
                    "items",
                    items(
                        fields("item", "guard", "state", "good"),
                        fields("item", "fuse", "state", "unchecked"),
                        fields(
                            "item",
                            "strain-relief",
                            "state",
                            "fault",
                            "value",
                            "4 mm",
                            "note",
                            "loose")))),
            Optional.empty());
    assertThat(readings.items())
        .extracting(InspectionReadings.Item::state)
        .containsExactly(
            InspectionReadings.State.GOOD,
            InspectionReadings.State.UNCHECKED,
            InspectionReadings.State.FAULT);
    assertThat(readings.items().get(2).value()).hasValue("4 mm");
    assertThat(readings.items().get(2).note()).hasValue("loose");
    assertThat(readings.items().get(0).note()).isEmpty();
    assertThat(readings.items().get(0).line()).isEqualTo(1);
  }

  private static InspectionReadings ofRows(String... table) {
    return InspectionReader.read(trial(fields("trial", "inspection"), table), Optional.empty());
  }

  @Test
  void aTableSaysTheSameAsAList() {
    var items =
        items(
            fields("item", "guard", "state", "good", "value", "2 mm"),
            fields("item", "fuse", "state", "fault", "note", "black"),
            fields("item", "dust", "state", "unchecked"));
    InspectionReadings listed =
        InspectionReader.read(
            trial(fields("trial", "inspection", "items", items)), Optional.empty());
    InspectionReadings rows =
        ofRows(
            "id, item, state, value, note, struck",
            "a, guard, good, 2 mm, , no",
            "b, dust, fault, , , yes",
            "c, fuse, fault, , black, no",
            "d, dust, unchecked, , , ");
    assertThat(rows.head()).isEqualTo(listed.head());
    assertThat(rows.items())
        .usingRecursiveFieldByFieldElementComparatorIgnoringFields("place")
        .isEqualTo(listed.items());
    assertThat(rows.items().get(1).line()).isEqualTo(4);
  }

  @ParameterizedTest
  @CsvSource({
    "item, guard, column-missing",
    "'item, state', 'guard, fine', word-unknown",
    "'item, state', 'guard, ', state-missing",
    "'item, state', ', good', field-missing",
    "'item, state, reading_um', 'guard, good, 1', column-unknown",
    "'item, state, struck', 'guard, good, yes', no-items",
  })
  void aTableIsRefusedAsAListIs(String header, String row, String code) {
    Refused refused = catchThrowableOfType(Refused.class, () -> ofRows(header, row));
    assertThat(refused.saying().code()).isEqualTo(code);
  }

  @Test
  void anItemTwiceIsRefused() {
    Refused refused =
        catchThrowableOfType(
            Refused.class, () -> ofRows("item, state", "guard, good", "guard, fault"));
    assertThat(refused.saying().code()).isEqualTo("name-twice");
  }
}
