package rundlauf.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static rundlauf.bench.Typed.fields;
import static rundlauf.bench.Typed.items;
import static rundlauf.bench.Typed.text;
import static rundlauf.bench.Typed.trial;

import java.util.Arrays;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rundlauf.bench.Entry;
import rundlauf.bench.Trial;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Refused;

/** What a trial was meant to be. */
class IntendedTest {
  private static Entry list(String... texts) {
    return items(Arrays.stream(texts).map(t -> text("", t)).toArray(Entry[]::new));
  }

  private static Intended of(String kind, Object... intended) {
    return Intended.of(trial(fields("trial", kind, "intended", fields(intended))));
  }

  @Test
  void aRunoutTrial() {
    Intended intended =
        of(
            "runout",
            "reading",
            "div",
            "positions",
            "6",
            "stations",
            list("5 mm", "0.02 m"),
            "clampings",
            "3",
            "collet",
            list("0 deg", "90 deg"),
            "shank",
            list("1/4 turn"));
    assertThat(intended.reading()).hasValue("div");
    assertThat(intended.positions()).hasValue(6);
    assertThat(intended.stations()).extracting(Quantity::si).containsExactly(0.005, 0.02);
    assertThat(intended.clampings()).hasValue(3);
    assertThat(intended.collet()).extracting(Quantity::si).containsExactly(0.0, Math.PI / 2);
    assertThat(intended.shank()).extracting(Quantity::si).containsExactly(Math.PI / 2);
  }

  @Test
  void otherTrials() {
    assertThat(of("side-load", "counts", list("0", "1", "4")).counts()).containsExactly(0, 1, 4);
    assertThat(of("side-load", "loads", list("0 N", "5 N")).loads())
        .extracting(Quantity::si)
        .containsExactly(0.0, 5.0);
    assertThat(of("side-load", "directions", list("0 deg", "120 deg")).directions())
        .containsExactly("0 deg", "120 deg");
    assertThat(of("axial", "directions", "pull", "repeats", "2").directions())
        .containsExactly("pull");
    assertThat(of("speed", "settings", list("20 %", "40%")).settings())
        .containsExactly("20 %", "40%");
    Intended growth = of("growth", "for", "40 min", "every", "90 s");
    assertThat(growth.span().orElseThrow().si()).isEqualTo(2400);
    assertThat(growth.every().orElseThrow().si()).isEqualTo(90);
  }

  @Test
  void nothingIsMeantWhereNothingIsSaid() {
    Intended nothing = Intended.of(trial(fields("trial", "runout")));
    assertThat(nothing).isEqualTo(of("runout"));
    assertThat(nothing.positions()).isEmpty();
    assertThat(nothing.stations()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "runout, reading, inch, word-unknown",
    "runout, positions, 3, count-expected",
    "runout, positions, 8.5, count-expected",
    "runout, positions, 401, intended-many",
    "runout, clampings, 0, count-expected",
    "runout, repeats, 0, count-expected",
    "runout, turns, 0, count-expected",
    "runout, turns, 101, intended-many-turns",
    "runout, rounds, 2, field-unknown",
    "runout, stations, 5 mm, list-expected",
    "growth, for, 0 min, value-not-positive",
    "growth, every, 2 mm, unit-of-another-kind",
    "side-load, directions, up, number-not-read",
    "axial, directions, 0 deg, axial-direction-unknown",
    "speed, settings, fast, number-not-read",
    "speed, settings, -3 V, value-negative",
    "speed, settings, 3 rpm, cell-has-unit",
  })
  void isRefused(String kind, String field, String typed, String code) {
    assertThat(refusal(kind, field, text("", typed))).isEqualTo(code);
  }

  @ParameterizedTest
  @CsvSource({
    "runout, stations, 5 deg, unit-of-another-kind",
    "runout, collet, 90, unit-missing",
    "runout, shank, 3 mm, unit-of-another-kind",
    "side-load, counts, -1, count-expected",
    "side-load, counts, 1.5, count-expected",
    "side-load, loads, -5 N, value-negative",
    "side-load, loads, 5 mm, unit-of-another-kind",
    "side-load, contacts, -5 mm, value-negative",
    "side-load, places, nut, intended-place",
    "side-load, directions, push, number-not-read",
    "axial, directions, up, axial-direction-unknown",
  })
  void isRefusedWithinAList(String kind, String field, String typed, String code) {
    assertThat(refusal(kind, field, list(typed))).isEqualTo(code);
  }

  @Test
  void settingsOfTwoUnitsAreRefused() {
    assertThat(refusal("speed", "settings", list("20 %", "5 V")))
        .isEqualTo("intended-settings-mixed");
    assertThat(refusal("speed", "settings", list("20", "5 V")))
        .isEqualTo("intended-settings-mixed");
  }

  private static String refusal(String kind, String field, Entry typed) {
    Trial document = trial(fields("trial", kind, "intended", fields(field, typed)));
    Refused refused = catchThrowableOfType(Refused.class, () -> Intended.of(document));
    assertThat(refused).as("refused").isNotNull();
    return refused.saying().code();
  }

  /** Every reader refuses what cannot be meant, before it looks at the readings. */
  @ParameterizedTest
  @CsvSource({"runout", "side-load", "axial", "growth", "speed", "inspection"})
  void isCheckedByEveryReader(String kind) {
    Trial document = trial(fields("trial", kind, "intended", fields("positions", "1")));
    Refused refused = catchThrowableOfType(Refused.class, () -> read(document));
    assertThat(refused.saying().code()).isEqualTo("count-expected");
    assertThat(refused.place().field()).isEqualTo("positions");
  }

  private static Object read(Trial trial) {
    return switch (TrialKind.of(trial)) {
      case RUNOUT -> RunoutReader.read(trial, Optional.empty());
      case SIDE_LOAD -> LoadReader.read(trial, Optional.empty());
      case AXIAL -> AxialReader.read(trial, Optional.empty());
      case GROWTH -> GrowthReader.read(trial, Optional.empty());
      case SPEED -> SpeedReader.read(trial, Optional.empty());
      case INSPECTION -> InspectionReader.read(trial, Optional.empty());
    };
  }
}
