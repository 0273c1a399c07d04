package rundlauf.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static rundlauf.bench.Typed.fields;
import static rundlauf.bench.Typed.items;
import static rundlauf.bench.Typed.trial;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rundlauf.bench.Bench;
import rundlauf.bench.BenchReader;
import rundlauf.bench.Entry;
import rundlauf.quantity.Cause;
import rundlauf.quantity.Figure;

/** Side-load trials understood; all readings are invented. */
class LoadReaderTest {
  private static final Entry.Fields DIAL = fields("division", "0.01 mm");
  private static final Entry.Fields LEVER =
      fields(
          "mass",
          "750 ± 1 g",
          "load-arm",
          "180 ± 0.5 mm",
          "contact-arm",
          "60 ± 0.5 mm",
          "gravity",
          "9.81 ± 0.01 m/s2");

  private static LoadReadings read(Entry.Fields document, String... table) {
    return LoadReader.read(trial(document, table), Optional.empty());
  }

  private static LoadReadings pushed(String... table) {
    return read(fields("trial", "side-load", "indicator", DIAL), table);
  }

  @Test
  void theCheckOfTheStandIsTakenAtItsWorst() {
    Entry.Fields stand = fields("load", "20 ± 2 N", "moved", "1 ± 0.8 um");
    LoadReadings readings =
        read(
            fields("trial", "side-load", "indicator", DIAL, "stand", stand),
            "load_N, reading_um",
            "0, 0",
            "20, 30");
    LoadReadings.Stand checked = readings.stand().orElseThrow();
    assertThat(checked.record()).isEqualTo("a.yaml");
    // source: recomputed: 1.8 µm at 18 N
    assertThat(checked.give()).isCloseTo(0.1e-6, within(1e-18));
  }

  @Test
  void theLeverMultipliesTheMass() {
    LoadReadings readings =
        read(
            fields("trial", "side-load", "indicator", DIAL, "load", LEVER),
            "count, reading_um",
            "0, 0",
            "2, 30");
    // source: recomputed: 2 · 0.750 kg · 9.81 m/s² · 180 / 60 = 44.145 N
    assertThat(readings.points().get(1).load()).isCloseTo(44.145, within(1e-12));
    List<Figure.Share> shares = readings.forceScale().budget();
    // source: JCGM 100:2008, 4.3.7 and 5.1.6: relative u of a product's factor is (a/√3)/x
    assertThat(shares)
        .extracting(s -> s.cause().id())
        .containsExactly("a.yaml/contact-arm", "a.yaml/load-arm", "a.yaml/mass", "a.yaml/gravity");
    assertThat(shares.get(0).u()).isCloseTo(0.5 / 60 / Math.sqrt(3), within(1e-15));
    assertThat(shares.get(1).u()).isCloseTo(0.5 / 180 / Math.sqrt(3), within(1e-15));
    assertThat(shares.get(2).u()).isCloseTo(1 / 750.0 / Math.sqrt(3), within(1e-15));
    assertThat(shares.get(3).u()).isCloseTo(0.01 / 9.81 / Math.sqrt(3), within(1e-15));
    assertThat(readings.forceScale().value()).isEqualTo(1);
  }

  @Test
  void aLongerContactArmLowersTheForce() {
    LoadReadings readings =
        read(
            fields("trial", "side-load", "indicator", DIAL, "load", LEVER),
            "count, reading_um",
            "0, 0",
            "2, 30");
    assertThat(readings.forceScale().effects().get(Cause.rectangular("a.yaml", "contact-arm")))
        .isNegative();
    assertThat(readings.forceScale().effects().get(Cause.rectangular("a.yaml", "load-arm")))
        .isPositive();
  }

  @Test
  void massesInTheRowsPullDirectlyUnlessALeverIsGiven() {
    // source: from memory: The International System of Units, 9th ed.: standard gravity 9.80665
    // m/s²
    assertThat(pushed("mass_g, reading_um", "0, 0", "1000, 30").points().get(1).load())
        .isCloseTo(9.80665, within(1e-12));
    LoadReadings levered =
        read(
            fields(
                "trial",
                "side-load",
                "indicator",
                DIAL,
                "load",
                fields("load-arm", "180 mm", "contact-arm", "60 mm")),
            "mass_kg, reading_um",
            "0, 0",
            "1, 30");
    assertThat(levered.points().get(1).load()).isCloseTo(3 * 9.80665, within(1e-12));
    assertThat(levered.forceScale().u()).isZero();
  }

  @Test
  void forcesInTheRowsAreTakenAsTheyAre() {
    LoadReadings readings = pushed("load_N, reading_um", "0, 0", "20, 30");
    assertThat(readings.points()).extracting(LoadReadings.Point::load).containsExactly(0.0, 20.0);
    assertThat(readings.forceScale().budget()).isEmpty();
  }

  @Test
  void whatIsNotSaid() {
    LoadReadings readings = pushed("load_N, reading_um", "0, 0", "20, 30");
    LoadReadings.Point point = readings.points().get(1);
    assertThat(point.place()).isEqualTo("shank");
    assertThat(point.at()).isEmpty();
    assertThat(point.direction()).isZero();
    assertThat(point.dial()).isZero();
    assertThat(point.branch()).isEqualTo(LoadReadings.Branch.UNSAID);
    assertThat(point.zeroed()).isEqualTo(1);
    assertThat(point.line()).isEqualTo(3);
    assertThat(readings.contact()).isEmpty();
    assertThat(readings.body()).isEmpty();
    assertThat(readings.reference()).isEmpty();
    assertThat(readings.reaction()).isEmpty();
  }

  @Test
  void whatIsSaid() {
    LoadReadings readings =
        read(
            fields(
                "trial",
                "side-load",
                "indicator",
                DIAL,
                "contact",
                "10 ± 0.5 mm",
                "body",
                fields("diameter", "3 mm", "modulus", "580 GPa"),
                "reference",
                "table",
                "reaction",
                "frame"),
            "load_N, reading_um, place, at_mm, direction_deg, dial_deg, branch",
            "0, 0, nut, -5, 90, 45, up",
            "20, 30, nut, -5, 90, 45, down");
    LoadReadings.Point point = readings.points().get(1);
    assertThat(point.place()).isEqualTo("nut");
    assertThat(point.at()).hasValue(-0.005);
    assertThat(point.direction()).isCloseTo(Math.PI / 2, within(1e-15));
    assertThat(point.dial()).isCloseTo(Math.PI / 4, within(1e-15));
    assertThat(point.branch()).isEqualTo(LoadReadings.Branch.DOWN);
    assertThat(readings.points().get(0).branch()).isEqualTo(LoadReadings.Branch.UP);
    assertThat(readings.contact().orElseThrow().si()).isEqualTo(0.01);
    assertThat(readings.body().orElseThrow().modulus().si()).isEqualTo(580e9);
    assertThat(readings.reference()).hasValue("table");
    assertThat(readings.reaction()).hasValue("frame");
  }

  @Test
  void theDialStandsWhereTheFirstPushWent() {
    LoadReadings readings =
        pushed("load_N, reading_um, direction_deg", "10, 10, 90", "10, -10, 270", "20, -20, 270");
    assertThat(readings.points()).extracting(LoadReadings.Point::dial).containsOnly(Math.PI / 2);
    assertThat(readings.points()).extracting(LoadReadings.Point::zeroed).containsOnly(1);
  }

  @Test
  void theDialIsSetAnewWithPlaceDistanceAndDirection() {
    LoadReadings readings =
        pushed(
            "load_N, reading_um, place, at_mm, dial_deg",
            "0, 0, shank, 10, 0",
            "9, 10, shank, 10, 0",
            "0, 0, nut, -10, 0",
            "9, 10, nut, -5, 0",
            "9, 10, nut, -5, 90",
            "0, 0, shank, 10, 90");
    assertThat(readings.points())
        .extracting(LoadReadings.Point::zeroed)
        .containsExactly(1, 1, 2, 3, 4, 5);
    LoadReadings placed =
        pushed("load_N, reading_um, place", "0, 0, shank", "9, 10, shank", "9, 10, nut");
    assertThat(placed.points()).extracting(LoadReadings.Point::zeroed).containsExactly(1, 1, 2);
    LoadReadings said =
        pushed("load_N, reading_um, place, zeroed", "0, 0, shank, 0", "9, 10, nut, 0");
    assertThat(said.points()).extracting(LoadReadings.Point::zeroed).containsExactly(0, 0);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "load_N, reading_um; 20, 30                                        | false",
        "load_N, reading_um; 20, 30; 20, 30                                | false",
        "load_N, reading_um, direction_deg; 20, 30, 0; 20, -30, 180        | true",
        "load_N, reading_um, direction_deg; 0, 0, 0; 0, 10, 180            | false",
        "load_N, reading_um, zeroed; 0, 0, 1; 20, 30, 2                    | false",
        "load_N, reading_um, zeroed; 0, 0, 1; 20, 30, 2; 0, 0, 2           | true",
      })
  void twoLoadsOnOneSettingAreNeeded(String rows, boolean accepted) {
    String[] table = rows.split(";");
    if (accepted) {
      assertThat(pushed(table).points()).isNotEmpty();
    } else {
      assertThatThrownBy(() -> pushed(table)).hasMessageStartingWith("no-difference-of-load");
    }
  }

  @Test
  void namesOfABenchGiveTheirRecords() {
    Bench bench =
        BenchReader.read(
            "bench.yaml",
            fields(
                "bench", "The inlay corner",
                "indicators", items(fields("name", "plunger dial", "division", "0.01 mm")),
                "rigs", items(fields("name", "brass lever", "mass", "750 ± 1 g"))),
            List.of());
    LoadReadings readings =
        LoadReader.read(
            trial(
                fields("trial", "side-load", "indicator", "plunger dial", "load", "brass lever"),
                "count, reading_um",
                "0, 0",
                "1, 30"),
            Optional.of(bench));
    assertThat(readings.indicator().record()).isEqualTo("indicator/plunger dial");
    assertThat(readings.forceScale().budget())
        .extracting(s -> s.cause().id())
        .containsExactly("rig/brass lever/mass");
  }
}
