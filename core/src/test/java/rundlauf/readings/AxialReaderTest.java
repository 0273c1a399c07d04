package rundlauf.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static rundlauf.bench.Typed.fields;
import static rundlauf.bench.Typed.trial;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rundlauf.bench.Entry;

/** Axial trials understood; all readings are invented. */
class AxialReaderTest {
  private static final Entry.Fields DIAL = fields("division", "0.01 mm");

  private static LoadReadings read(String... table) {
    return AxialReader.read(
        trial(fields("trial", "axial", "indicator", DIAL), table), Optional.empty());
  }

  @ParameterizedTest
  @CsvSource({
    "direction, push, pull",
    "direction, 0 deg, 180 deg",
    "direction, 0 rad, 0.5 turn",
    "direction_deg, 0, 180",
    "direction_deg, 0, -180",
    "direction_deg, push, pull",
    "direction_turn, 1, 0.5"
  })
  void aPushIsTowardTheHousingAndAPullAway(String column, String push, String pull) {
    LoadReadings readings =
        read("load_N, " + column + ", reading_um", "10, " + push + ", 20", "10, " + pull + ", -20");
    assertThat(readings.points())
        .extracting(LoadReadings.Point::direction)
        .containsExactly(0.0, Math.PI);
    assertThat(readings.points()).allMatch(p -> p.dial() == 0 && p.zeroed() == 1);
  }

  @Test
  void withoutDirectionsALoadBelowZeroIsAPull() {
    LoadReadings readings = read("load_N, reading_um", "-10, -20", "0, 0", "10, 20");
    assertThat(readings.points())
        .extracting(LoadReadings.Point::load)
        .containsExactly(10.0, 0.0, 10.0);
    assertThat(readings.points())
        .extracting(LoadReadings.Point::direction)
        .containsExactly(Math.PI, 0.0, 0.0);
    assertThat(readings.points()).allMatch(p -> p.dial() == 0);
  }

  @Test
  void theDialRisesTheWayOfTheFirstRowUnlessItSaysOtherwise() {
    assertThat(read("load_N, direction, reading_um", "0, pull, 0", "10, pull, 20").points())
        .allMatch(p -> p.dial() == Math.PI);
    LoadReadings beneath =
        read("load_N, direction, dial, reading_um", "0, push, pull, 0", "10, push, pull, -20");
    assertThat(beneath.points()).allMatch(p -> p.dial() == Math.PI && p.direction() == 0);
  }

  @Test
  void anUnloadedRowNeedsNoDirection() {
    LoadReadings readings = read("load_N, direction, reading_um", "0, , 0", "10, pull, -20");
    assertThat(readings.points().get(0).direction()).isZero();
    assertThat(readings.points()).allMatch(p -> p.dial() == 0);
  }
}
