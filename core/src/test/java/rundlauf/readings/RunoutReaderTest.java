package rundlauf.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static rundlauf.bench.Typed.fields;
import static rundlauf.bench.Typed.trial;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rundlauf.bench.Entry;
import rundlauf.bench.Trial;
import rundlauf.quantity.Refused;

/** Runout trials understood; all readings are invented. */
class RunoutReaderTest {
  private static final Entry.Fields DIAL = fields("division", "0.01 mm");
  private static final String[] TURN = {
    "angle_deg, reading_um", "0, 0", "90, 10", "180, 20", "270, 10"
  };

  private static RunoutReadings of(Entry.Fields document, String... table) {
    return RunoutReader.read(trial(document, table), Optional.empty());
  }

  private static RunoutReadings turned(String... table) {
    return of(fields("trial", "runout", "indicator", DIAL), table);
  }

  @Test
  void anglesAndReadingsAreInSi() {
    RunoutReadings readings = turned(TURN);
    RunoutReadings.Sweep sweep = readings.sweeps().get(0);
    assertThat(sweep.angle().toArray())
        .containsExactly(new double[] {0, Math.PI / 2, Math.PI, 1.5 * Math.PI}, within(1e-15));
    assertThat(sweep.reading().toArray())
        .containsExactly(new double[] {0, 1e-5, 2e-5, 1e-5}, within(1e-19));
    assertThat(sweep.station()).isEmpty();
    assertThat(sweep.clamping()).isEqualTo(1);
    assertThat(sweep.line()).isEqualTo(2);
    assertThat(readings.angleLimit()).isCloseTo(Math.toRadians(3), within(1e-15));
    assertThat(readings.gaugeDiameter()).isEmpty();
    assertThat(readings.tip()).isEmpty();
  }

  @Test
  void columnsInAnyOrderAndUnitSayTheSame() {
    RunoutReadings other =
        turned(
            "id, reading_mm, angle_turn",
            "a, 0, 0",
            "b, 0.01, 0.25",
            "c, 0.02, 1/2",
            "d, 1e-2, 0.75");
    RunoutReadings.Sweep sweep = other.sweeps().get(0);
    assertThat(sweep.reading().toArray())
        .containsExactly(turned(TURN).sweeps().get(0).reading().toArray(), within(1e-19));
    assertThat(sweep.angle().toArray())
        .containsExactly(turned(TURN).sweeps().get(0).angle().toArray(), within(1e-15));
  }

  @Test
  void gaugeAndAngleLimit() {
    Entry.Fields document =
        fields(
            "trial", "runout",
            "title", "Pin",
            "date", "2026-03-14T09:30",
            "setup", "Heron 3 mm",
            "gauge", fields("diameter", "1/8 in", "tip", "28 ± 0.5 mm"),
            "indicator", DIAL,
            "angle-limit", "± 5 deg",
            "conditions", fields("warm-up", "20 min", "temperature", "-5 degC", "nut", "8 N m"));
    RunoutReadings readings = of(document, TURN);
    assertThat(readings.gaugeDiameter()).hasValue(0.003175);
    assertThat(readings.tip().orElseThrow().halfWidth()).isCloseTo(5e-4, within(1e-18));
    assertThat(readings.angleLimit()).isCloseTo(Math.toRadians(5), within(1e-15));
    assertThat(readings.head().kind()).isEqualTo("runout");
    assertThat(readings.head().title()).hasValue("Pin");
    assertThat(readings.head().date()).hasValue("2026-03-14T09:30");
    assertThat(readings.head().setup()).hasValue("Heron 3 mm");
    assertThat(readings.head().conditions())
        .containsExactly(
            java.util.Map.entry("warm-up", "20 min"),
            java.util.Map.entry("temperature", "-5 degC"),
            java.util.Map.entry("nut", "8 N m"));
  }

  @Test
  void sweepsAreOneForEachStationAndClamping() {
    List<RunoutReadings.Sweep> sweeps =
        turned(
                "clamping, station_mm, angle_deg, reading_um, collet_deg, shank_deg",
                "1, 5,   0, 0, 0, 180",
                "1, 5,  90, 10, 0, 180",
                "1, 5, 180, 20, 0, 180",
                "1, 15,  0, 0, 0, 180",
                "1, 15, 90, 10, 0, 180",
                "1, 15, 180, 20, 0, 180",
                "1, 5, 270, 10, 0, 180",
                "1, 15, 270, 10, 0, 180",
                "2, 5,   0, 0, 180, ",
                "2, 5,  90, 0, 180, ",
                "2, 5, 180, 0, 180, ",
                "2, 5, 270, 0, 180, ")
            .sweeps();
    assertThat(sweeps)
        .extracting(s -> s.station().getAsDouble())
        .containsExactly(0.005, 0.015, 0.005);
    assertThat(sweeps).extracting(RunoutReadings.Sweep::clamping).containsExactly(1, 1, 2);
    assertThat(sweeps.get(0).reading().size()).isEqualTo(4);
    assertThat(sweeps.get(0).shank()).hasValueCloseTo(Math.PI, within(1e-15));
    assertThat(sweeps.get(2).collet()).hasValueCloseTo(Math.PI, within(1e-15));
    assertThat(sweeps.get(2).shank()).isEmpty();
    assertThat(sweeps.get(2).line()).isEqualTo(10);
  }

  @Test
  void turnsAreCountedOnByAngleOrByNumber() {
    double[] wanted = {0, Math.PI, 2 * Math.PI, 3 * Math.PI, 4 * Math.PI};
    double[] byAngle =
        turned("angle_deg, reading_um", "0,0", "180,0", "360,0", "540,0", "90,0", "720,0")
            .sweeps()
            .get(0)
            .angle()
            .toArray();
    assertThat(byAngle[5]).isCloseTo(wanted[4], within(1e-14));
    double[] byNumber =
        turned(
                "turn, angle_deg, reading_um",
                "1,0,0",
                "1,90,0",
                "1,180,0",
                "2,0,0",
                "2,180,0",
                "2,360,0")
            .sweeps()
            .get(0)
            .angle()
            .toArray();
    assertThat(byNumber[3]).isCloseTo(wanted[2], within(1e-14));
    assertThat(byNumber[4]).isCloseTo(wanted[3], within(1e-14));
    assertThat(byNumber[5]).isCloseTo(wanted[4], within(1e-14));
  }

  @Test
  void struckRowsAreLeftOutUnread() {
    RunoutReadings readings =
        turned(
            "angle_deg, reading_um, struck, reason",
            "0, 0, no,",
            "90, 10,,",
            "what, ever, yes, leaned on it",
            "180, 20,,",
            "270, 10,,");
    assertThat(readings.sweeps().get(0).reading().size()).isEqualTo(4);
  }

  @Test
  void swingsAreOneSweepARow() {
    List<RunoutReadings.Sweep> sweeps =
        turned("station_mm, swing_mm", "5, 0.05", "15, 0.07").sweeps();
    assertThat(sweeps.get(0).swing()).hasValueCloseTo(5e-5, within(1e-19));
    assertThat(sweeps.get(1).swing()).hasValueCloseTo(7e-5, within(1e-19));
    assertThat(sweeps.get(0).angle().size()).isZero();
    assertThat(sweeps.get(1).line()).isEqualTo(3);
  }

  @Test
  void theCosineCorrectsReadingsAndLimitsAlike() {
    Entry.Fields dial =
        fields(
            "division",
            "0.01 mm",
            "angle",
            "60 deg",
            "hysteresis",
            "3 um",
            "repeatability",
            "2 um",
            "tip-radius",
            "1 mm",
            "limit-of-error",
            fields("tenth-turn", "2 um", "half-turn", "4 um", "turn", "6 um", "range", "8 um"));
    RunoutReadings readings = of(fields("trial", "runout", "indicator", dial), TURN);
    IndicatorLimits limits = readings.indicator();
    // source: recomputed: cos 60° = 1/2
    assertThat(readings.sweeps().get(0).reading().max()).isCloseTo(1e-5, within(1e-19));
    assertThat(limits.division()).isCloseTo(5e-6, within(1e-19));
    assertThat(limits.readTo()).isCloseTo(5e-6, within(1e-19));
    assertThat(limits.hysteresis()).hasValueCloseTo(1.5e-6, within(1e-19));
    assertThat(limits.repeatability()).hasValueCloseTo(1e-6, within(1e-19));
    assertThat(limits.tipRadius()).hasValue(1e-3);
    assertThat(limits.record()).isEqualTo("a.yaml");
    IndicatorLimits.LimitOfError error = limits.limitOfError().orElseThrow();
    // source: common practice, no source: one turn of the needle is 100 divisions
    assertThat(error.needleTurn()).isCloseTo(0.5e-3, within(1e-15));
    assertThat(error.over(0.04e-3)).isCloseTo(1e-6, within(1e-19));
    assertThat(error.over(0.2e-3)).isCloseTo(2e-6, within(1e-19));
    assertThat(error.over(0.5e-3)).isCloseTo(3e-6, within(1e-19));
    assertThat(error.over(0.6e-3)).isCloseTo(4e-6, within(1e-19));
  }

  @ParameterizedTest
  @CsvSource({
    "0.01 mm,   um, 30, true", "0.01 mm,   um, -130, true", "0.01 mm,  um, 35, false",
    "0.01 mm,   mm, 0.29, true", "0.01 mm, mm, 1.23, true", "0.01 mm,  mm, 0.295, false",
    "0.001 in, thou, 7, true", "0.0005 in, thou, 7.5, true", "0.0005 in, thou, 7.3, false",
    "0.0005 in, mm, 0.0127, true", "0.0005 in, mm, 0.013, false", "0.0001 in, in, 0.0123, true",
    "0.002 mm,  um, 4999.998, false", "0.002 mm, um, 5000, true",
        "1 um, in, 0.00039370078740157, true",
  })
  void readingsLieOnTheGrid(String division, String unit, String reading, boolean accepted) {
    Trial trial =
        trial(
            fields("trial", "runout", "indicator", fields("division", division)),
            "angle_deg, reading_" + unit,
            "0, 0",
            "90, " + reading,
            "180, 0",
            "270, 0");
    if (accepted) {
      assertThat(RunoutReader.read(trial, Optional.empty()).sweeps()).hasSize(1);
    } else {
      assertThatThrownBy(() -> RunoutReader.read(trial, Optional.empty()))
          .isInstanceOf(Refused.class)
          .hasMessageStartingWith("reading-off-grid");
    }
  }

  @Test
  void readToMakesTheGridFiner() {
    String[] table = {"angle_deg, reading_um", "0, 0", "90, 5", "180, 15", "270, 0"};
    assertThatThrownBy(() -> turned(table)).hasMessageStartingWith("reading-off-grid");
    RunoutReadings fine =
        of(
            fields(
                "trial", "runout", "indicator", fields("division", "0.01 mm", "read-to", "5 um")),
            table);
    assertThat(fine.indicator().readTo()).isCloseTo(5e-6, within(1e-19));
    assertThat(fine.indicator().division()).isCloseTo(1e-5, within(1e-19));
  }

  @Test
  void threePositionsAndTheFirstAgainAreEnough() {
    assertThat(turned("angle_deg, reading_um", "0,0", "120,10", "240,20", "360,0").sweeps())
        .hasSize(1);
    assertThat(
            turned("angle_deg, reading_um", "0,0", "180,10", "90,20", "359.9999999999,0").sweeps())
        .hasSize(1);
    assertThat(turned("angle_deg, reading_um", "-90,0", "0,10", "90,20", "-180,0").sweeps())
        .hasSize(1);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0,0; 90,0; 180,0            | too-few-readings",
        "0,0; 180,0; 0,0; 180,0; 360,0 | too-few-positions",
        "0,0; 10,0; 20,0; 170,0      | turn-not-covered",
        "5,0; 10,0; 20,0; 170,0; 365,0 | turn-not-covered",
      })
  void anOpenCircleIsRefused(String rows, String code) {
    String[] table = ("angle_deg, reading_um;" + rows).split(";");
    assertThatThrownBy(() -> turned(table)).hasMessageStartingWith(code);
  }

  @Test
  void aTrialOfAnotherKindIsOurMistake() {
    assertThatThrownBy(() -> of(fields("trial", "speed"), TURN))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
