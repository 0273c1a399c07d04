package rundlauf.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import rundlauf.quantity.Refused;
import rundlauf.quantity.Saying;
import rundlauf.readings.InspectionReadings;
import rundlauf.readings.InspectionReadings.Item;
import rundlauf.readings.InspectionReadings.State;
import rundlauf.readings.TrialHead;

class InspectionReductionCaseTest {
  @Test
  void aWholeListFoundGoodDoesNotHold() {
    Inspection found = reduce(whole());
    assertThat(found.hold()).isFalse();
    assertThat(found.because()).isEmpty();
    assertThat(found.cautions()).isEmpty();
    assertThat(codes(found.advice())).containsExactly("inspection-defers");
  }

  @ParameterizedTest
  @EnumSource(SafetyItem.class)
  void everyItemHoldsWhenAbsentUncheckedOrFaulty(SafetyItem item) {
    List<Item> without = whole();
    without.removeIf(i -> i.item().equals(item.id()));
    assertThat(reduce(without).hold()).isTrue();
    assertThat(codes(reduce(without).because())).containsExactly("inspection-absent");
    List<Item> unchecked = new ArrayList<>(without);
    unchecked.add(item(item.id(), State.UNCHECKED, ""));
    assertThat(codes(reduce(unchecked).because())).containsExactly("inspection-unchecked");
    assertThat(reduce(unchecked).because().get(0).about()).isEqualTo(item.id());
    List<Item> faulty = new ArrayList<>(without);
    faulty.add(item(item.id(), State.FAULT, ""));
    assertThat(codes(reduce(faulty).because())).containsExactly("inspection-fault");
    assertThat(codes(reduce(faulty).cautions())).containsExactly("inspection-hold");
  }

  @ParameterizedTest
  @CsvSource({
    "protective-earth, 0.3 ohm, 0.31 ohm, inspection-over-limit",
    "insulation-resistance, 1 Mohm, 0.99 Mohm, inspection-under-limit",
    "leakage-current, 0.0035 A, 0.0036 A, inspection-over-limit",
    "touchable-voltage, 25 V ac, 25.1 V ac, inspection-over-limit",
    "touchable-voltage, 25 V, 26 V, inspection-over-limit",
    "touchable-voltage, 60 V dc, 60.5 V dc, inspection-over-limit",
  })
  void aNumberBeyondItsLimitHoldsThoughMarkedGood(
      String item, String within, String beyond, String code) {
    // source: DIN VDE 0701-0702:2008, as quoted in an appliance tester's manual: protective
    // conductor 0.3 ohm to 5 m, insulation of class I 1.0 Mohm, protective conductor current 3.5 mA
    // source: IEC 61140, as quoted in two power-supply makers' glossaries: 25 V AC, 60 V DC, dry
    assertThat(reduce(with(item, State.GOOD, within)).hold()).isFalse();
    Inspection held = reduce(with(item, State.GOOD, beyond));
    assertThat(held.hold()).isTrue();
    assertThat(codes(held.because())).containsExactly(code);
    assertThat(codes(held.cautions()))
        .containsExactly("inspection-hold", "inspection-good-beyond-limit");
  }

  @Test
  void aFaultIsOneReasonAndItsNumberAnother() {
    Inspection held = reduce(with("protective-earth", State.FAULT, "4.1 ohm"));
    assertThat(codes(held.because())).containsExactly("inspection-fault", "inspection-over-limit");
    assertThat(codes(held.cautions())).containsExactly("inspection-hold");
  }

  @Test
  void ownItemsHoldOnlyWithAFault() {
    List<Item> more = whole();
    more.add(item("coolant hose", State.UNCHECKED, ""));
    assertThat(reduce(more).hold()).isFalse();
    assertThat(codes(reduce(more).advice())).contains("inspection-not-on-list");
    more.add(item("cracked housing", State.FAULT, ""));
    assertThat(codes(reduce(more).because())).containsExactly("inspection-fault");
  }

  @Test
  void namesAreReadWithBlanksAndCapitals() {
    assertThat(SafetyItem.named(" Protective  earth ")).contains(SafetyItem.PROTECTIVE_EARTH);
    assertThat(SafetyItem.named("eyes_and_ears")).contains(SafetyItem.EYES_AND_EARS);
    assertThat(SafetyItem.named("earth")).isEmpty();
  }

  @Test
  void aBatterySpindleWithoutBrushesNeedsLess() {
    List<SafetyItem> few = SafetyItem.of(new SafetyItem.Fed(false, false, false));
    assertThat(few)
        .doesNotContain(
            SafetyItem.PROTECTIVE_EARTH, SafetyItem.BRUSHES, SafetyItem.DRIVE_DISCHARGE_TIME)
        .contains(SafetyItem.TOUCHABLE_VOLTAGE, SafetyItem.GUARD);
    List<Item> items =
        new ArrayList<>(few.stream().map(i -> item(i.id(), State.GOOD, "")).toList());
    assertThat(InspectionReduction.reduce(readings(items), few).hold()).isFalse();
    items.add(item("brushes", State.UNCHECKED, ""));
    assertThat(InspectionReduction.reduce(readings(items), few).hold()).isFalse();
    items.add(item("protective-earth", State.FAULT, ""));
    assertThat(InspectionReduction.reduce(readings(items), few).hold()).isTrue();
  }

  @ParameterizedTest
  @CsvSource({
    "low, number-not-read", "0.1, unit-missing", "0.1 V, unit-of-another-kind",
    "NaN ohm, number-not-finite", "0.1 ohms, unit-unknown", "'', quantity-empty",
  })
  void aNumberThatCannotBeReadIsRefusedWithItsLine(String value, String code) {
    assertThatThrownBy(() -> reduce(with("protective-earth", State.GOOD, value + " ")))
        .isInstanceOfSatisfying(
            Refused.class,
            r -> {
              assertThat(r.saying().code()).isEqualTo(code);
              assertThat(r.place().line()).isEqualTo(7);
            });
  }

  private static List<Item> whole() {
    return new ArrayList<>(
        Arrays.stream(SafetyItem.values()).map(i -> item(i.id(), State.GOOD, "")).toList());
  }

  private static List<Item> with(String name, State state, String value) {
    List<Item> items = whole();
    items.removeIf(i -> i.item().equals(name));
    items.add(item(name, state, value));
    return items;
  }

  private static Item item(String name, State state, String value) {
    Optional<String> typed = value.isEmpty() ? Optional.empty() : Optional.of(value);
    return new Item(
        name,
        state,
        typed,
        Optional.empty(),
        new rundlauf.quantity.Place("inspection.yaml", 7, 0, "items"));
  }

  private static Inspection reduce(List<Item> items) {
    return InspectionReduction.reduce(readings(items));
  }

  private static InspectionReadings readings(List<Item> items) {
    TrialHead head =
        new TrialHead(
            "look.yaml",
            "inspection",
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Map.of());
    return new InspectionReadings(head, items);
  }

  private static List<String> codes(List<Saying> sayings) {
    return sayings.stream().map(Saying::code).toList();
  }
}
