package rundlauf.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static rundlauf.bench.Typed.fields;
import static rundlauf.bench.Typed.trial;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import rundlauf.bench.Trial;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;
import rundlauf.readings.RunoutReader;
import rundlauf.readings.RunoutReadings;

/** A turn that is being read is drawn as it stands; invented readings. */
class BegunTurnTest {
  private static Trial taken(String... table) {
    return trial(fields("trial", "runout", "indicator", fields("division", "0.01 mm")), table);
  }

  private static Optional<RunoutReadings.Sweep> begun(String... table) {
    return RunoutReader.begun(taken(table), Optional.empty());
  }

  @Test
  void isTheSweepOfTheLastRowWithoutWhatWasStruck() {
    RunoutReadings.Sweep sweep =
        begun(
                "station_mm, angle_deg, reading_div, struck",
                "5, 0, 7, no",
                "20, 0, 1, no",
                "20, 90, 9, yes",
                "20, 90, 2, no")
            .orElseThrow();
    assertThat(sweep.station()).hasValue(0.02);
    assertThat(sweep.angle().toArray()).containsExactly(new double[] {0, Math.PI / 2});
    assertThat(sweep.reading().toArray()).containsExactly(new double[] {1e-5, 2e-5}, within(1e-19));
    assertThat(sweep.line()).isEqualTo(3);
  }

  @Test
  void isNoneWhereNothingWasReadRoundATurn() {
    assertThat(begun()).isEmpty();
    assertThat(begun("angle_deg, reading_um")).isEmpty();
    assertThat(begun("angle_deg, reading_um, struck", "0, 0, yes")).isEmpty();
    assertThat(begun("swing_um", "40")).isEmpty();
  }

  @Test
  void isRefusedForWhatTheReaderRefuses() {
    assertThatThrownBy(() -> begun("angle_deg, reading_um", "0, 3"))
        .isInstanceOfSatisfying(
            Refused.class, r -> assertThat(r.saying().code()).isEqualTo("reading-off-grid"));
  }

  @Test
  void isDrawnFromTheMiddleBetweenItsReadings() {
    String[] table = {"angle_deg, reading_um", "0, 10", "45, 50", "90, 20"};
    Chart.Polar chart = (Chart.Polar) BegunTurn.of(begun(table).orElseThrow(), "chart-begun");
    assertThat(chart.readings().toArray())
        .containsExactly(new double[] {-2e-5, 2e-5, -1e-5}, within(1e-18));
    assertThat(chart.span()).isCloseTo(2e-5, within(1e-18));
    assertThat(chart.fit().size()).isZero();
    assertThat(chart.twin().rows()).hasSize(3);
    assertThat(((Cell.Number) chart.twin().rows().get(1).cells().get(1)).si())
        .isCloseTo(5e-5, within(1e-18));
  }

  @Test
  void equalReadingsLieOnTheMiddle() {
    Chart.Polar chart =
        (Chart.Polar) BegunTurn.of(begun("angle_deg, reading_um", "0, 10").orElseThrow(), "c");
    assertThat(chart.readings().toArray()).containsExactly(0.0);
    assertThat(chart.span()).isPositive();
  }

  @Test
  void standsWhereTheReadingsTellNothingYet() {
    String[] table = {"angle_deg, reading_um", "0, 10", "45, 50"};
    var refused = Refused.at(Place.NOWHERE, "too-few-readings");
    var outcome = new Outcome.Unusable(taken(table), Optional.empty(), refused);
    assertThat(LivePart.of(outcome, Optional.empty(), begun(table)).blocks())
        .filteredOn(Chart.Polar.class::isInstance)
        .hasSize(1);
    assertThat(LivePart.of(outcome, Optional.empty(), Optional.empty()).blocks())
        .noneMatch(Chart.class::isInstance);
  }
}
