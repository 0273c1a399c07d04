package rundlauf.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static rundlauf.bench.Typed.fields;
import static rundlauf.bench.Typed.items;
import static rundlauf.bench.Typed.text;
import static rundlauf.bench.Typed.trial;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Speed trials understood; all readings are invented. */
class SpeedReaderTest {
  @ParameterizedTest
  @CsvSource({"setting, ''", "setting_%, %", "setting_V, V"})
  void settingsStayInTheirUnit(String column, String unit) {
    SpeedReadings readings =
        SpeedReader.read(
            trial(
                fields("trial", "speed"),
                column + ", speed_rpm, power_W",
                "45.5, 6000, 40",
                "50, 0, "),
            Optional.empty());
    assertThat(readings.settingUnit()).isEqualTo(unit);
    SpeedReadings.Point point = readings.points().get(0);
    assertThat(point.setting()).isCloseTo(45.5, within(1e-12));
    // source: recomputed: 6000 a minute are 100 a second
    assertThat(point.speed()).isCloseTo(100, within(1e-12));
    assertThat(point.power()).hasValue(40);
    assertThat(readings.points().get(1).power()).isEmpty();
    assertThat(readings.points().get(1).line()).isEqualTo(3);
    assertThat(readings.wanted().size()).isZero();
  }

  @Test
  void wantedSpeeds() {
    SpeedReadings readings =
        SpeedReader.read(
            trial(
                fields(
                    "trial",
                    "speed",
                    "wanted",
                    items(text("wanted", "12000 rpm"), text("wanted", "50 Hz"))),
                "setting, speed_Hz",
                "1, 100"),
            Optional.empty());
    assertThat(readings.wanted().toArray()).containsExactly(200, 50);
    assertThatThrownBy(
            () ->
                SpeedReader.read(
                    trial(
                        fields("trial", "speed", "wanted", items(text("wanted", "50 ± 1 Hz"))),
                        "setting, speed_Hz",
                        "1, 100"),
                    Optional.empty()))
        .hasMessageStartingWith("limits-not-taken");
  }
}
