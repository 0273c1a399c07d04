package rundlauf.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rundlauf.bench.Typed.fields;
import static rundlauf.bench.Typed.trial;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import rundlauf.bench.Entry;

/** Growth trials understood; all readings are invented. */
class GrowthReaderTest {
  private static GrowthReadings read(Entry.Fields document, String... table) {
    return GrowthReader.read(trial(document, table), Optional.empty());
  }

  private static Entry.Fields document(Entry.Fields conditions) {
    return fields(
        "trial",
        "growth",
        "indicator",
        fields("division", "0.01 mm", "angle", "60 deg"),
        "conditions",
        conditions);
  }

  @Test
  void timesAreSecondsAndReadingsAlongTheAxis() {
    GrowthReadings readings =
        read(
            document(fields("warm-up", "20 min")),
            "time_min, reading_um, temperature_degC",
            "10, 0, 20",
            "11, 20, ",
            "15, 30, 25",
            "30, 40, 30.5");
    // source: recomputed: cos 60° = 1/2; 20 min are 1200 s
    assertThat(readings.start()).isCloseTo(600, within(1e-9));
    assertThat(readings.span()).isCloseTo(1200, within(1e-9));
    assertThat(readings.points().get(3).reading()).isCloseTo(20e-6, within(1e-15));
    assertThat(readings.points().get(1).temperature()).isEmpty();
    assertThat(readings.points().get(3).temperature()).hasValue(30.5);
    assertThat(readings.warmedBefore()).hasValue(1200);
  }

  @Test
  void whatIsNotSaidIsEmpty() {
    GrowthReadings readings =
        read(
            fields("trial", "growth", "indicator", fields("division", "0.01 mm")),
            "time_s, reading_mm",
            "0, 0",
            "60, 0.01",
            "60, 0.01",
            "120, 0.02",
            "180, 0.02");
    assertThat(readings.warmedBefore()).isEmpty();
    assertThat(readings.reference()).isEmpty();
    assertThat(readings.points()).hasSize(5);
  }
}
