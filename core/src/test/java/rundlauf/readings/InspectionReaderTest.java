package rundlauf.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static rundlauf.bench.Typed.fields;
import static rundlauf.bench.Typed.items;
import static rundlauf.bench.Typed.trial;

import java.util.Optional;
import org.junit.jupiter.api.Test;

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
}
