package rundlauf.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;
import static rundlauf.bench.Typed.fields;
import static rundlauf.bench.Typed.trial;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rundlauf.bench.Entry;
import rundlauf.quantity.Refused;

/** What a needle showed says the same in divisions, thousandths and micrometres; invented. */
class DivisionsTest {
  /** What converting decimals to binary leaves behind of a tenth of a millimetre [m]. */
  private static final double GRAIN = 1e-19;

  private static Entry.Fields dial(String division) {
    return fields("division", division, "angle", "12 deg");
  }

  private static double[] runout(String division, String unit, String... readings) {
    String[] table = {
      "angle_deg, reading_" + unit,
      "0, " + readings[0],
      "90, " + readings[1],
      "180, " + readings[2],
      "270, " + readings[1]
    };
    Entry.Fields document = fields("trial", "runout", "indicator", dial(division));
    RunoutReadings read = RunoutReader.read(trial(document, table), Optional.empty());
    return read.sweeps().get(0).reading().toArray();
  }

  @ParameterizedTest
  @CsvSource({
    "0.01 mm, div, 0, -1, 3, 0, -10, 30",
    "0.002 mm, div, 7, 0, 250, 14, 0, 500",
    "1 thou, thou, 0, 2, -3, 0, 50.8, -76.2",
    "0.5 thou, div, 1, 2, -3, 12.7, 25.4, -38.1",
  })
  void areTheSame(
      String division,
      String unit,
      String a,
      String b,
      String c,
      String aUm,
      String bUm,
      String cUm) {
    assertThat(runout(division, unit, a, b, c))
        .containsExactly(runout(division, "um", aUm, bUm, cUm), within(GRAIN));
  }

  /** One column in divisions, one in micrometres, through every other reader of a dial. */
  @Test
  void areTheSameInEveryTrialWithADial() {
    assertThat(load("div", "0", "2", "4"))
        .containsExactly(load("um", "0", "20", "40"), within(GRAIN));
    assertThat(growth("div", "0", "2", "4"))
        .containsExactly(growth("um", "0", "20", "40"), within(GRAIN));
  }

  private static double[] load(String unit, String... readings) {
    String[] table = {
      "load_N, reading_" + unit, "0, " + readings[0], "5, " + readings[1], "9, " + readings[2]
    };
    Entry.Fields document = fields("trial", "side-load", "indicator", dial("0.01 mm"));
    return LoadReader.read(trial(document, table), Optional.empty()).points().stream()
        .mapToDouble(LoadReadings.Point::reading)
        .toArray();
  }

  private static double[] growth(String unit, String... readings) {
    String[] table = {
      "time_min, reading_" + unit,
      "0, " + readings[0],
      "2, " + readings[1],
      "4, " + readings[2],
      "6, " + readings[2]
    };
    Entry.Fields document = fields("trial", "growth", "indicator", dial("0.01 mm"));
    return GrowthReader.read(trial(document, table), Optional.empty()).points().stream()
        .mapToDouble(GrowthReadings.Point::reading)
        .toArray();
  }

  @Test
  void anOverallSwingMayBeCountedInThem() {
    Entry.Fields document = fields("trial", "runout", "indicator", dial("0.01 mm"));
    assertThat(swing(document, "swing_div", "4"))
        .isCloseTo(swing(document, "swing_um", "40"), within(GRAIN));
  }

  private static double swing(Entry.Fields document, String column, String cell) {
    RunoutReadings read = RunoutReader.read(trial(document, column, cell), Optional.empty());
    return read.sweeps().get(0).swing().orElseThrow();
  }

  @Test
  void aPartOfADivisionIsRefusedAndNamedAsTyped() {
    Refused refused =
        catchThrowableOfType(Refused.class, () -> runout("0.01 mm", "div", "0", "1.5", "3"));
    assertThat(refused.saying().code()).isEqualTo("reading-off-grid");
    assertThat(refused.saying().args().get(0).toString()).contains("1.5 div");
  }

  @Test
  void noOtherColumnIsCountedInDivisions() {
    Refused refused =
        catchThrowableOfType(
            Refused.class,
            () ->
                RunoutReader.read(
                    trial(
                        fields("trial", "runout", "indicator", dial("0.01 mm")),
                        "station_div, angle_deg, reading_um",
                        "1, 0, 0"),
                    Optional.empty()));
    assertThat(refused.saying().code()).isEqualTo("column-unit-unknown");
  }
}
