package rundlauf.safety.norm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rundlauf.maths.Distributions;
import rundlauf.maths.Stream;
import rundlauf.quantity.Cause;
import rundlauf.quantity.Drawn;
import rundlauf.quantity.Measured;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.reduce.NormVerdict.Outcome;

/** The decision rule by closed forms, and the norms' tables against their sources. */
class ConformityCaseTest {
  private static final double UM = 1e-6;

  // source: from memory: JCGM 106:2012, 7.3, Table 1: conformance probability and z = (T - y)/u
  @ParameterizedTest
  @CsvSource({"0.80, 0.84", "0.90, 1.28", "0.95, 1.64", "0.99, 2.33", "0.999, 3.09"})
  void aNormalValueConformsWithPhiOfZ(double probability, double z) {
    Measured figure = Measured.exact(10 * UM, Unit.MICROMETRE).with(Cause.normal("a", "b"), 2 * UM);
    double limit = 10 * UM + 2 * UM * z;
    assertThat(Conformity.probabilityWithin(figure, limit)).isCloseTo(probability, within(0.0015));
    // source: recomputed: Φ((T − y)/u)
    assertThat(Conformity.probabilityWithin(figure, limit))
        .isCloseTo(Distributions.normal(z), within(1e-12));
  }

  @Test
  void drawsOfANormalValueGiveTheSame() {
    Stream stream = Stream.of(11, "conformity");
    Drawn figure =
        Drawn.of(
            Unit.MICROMETRE,
            stream.gaussians(200_000).map(x -> (10 + 2 * x) * UM),
            new LinkedHashMap<>());
    for (double z : new double[] {-1.5, 0, 0.84, 1.64, 2.33}) {
      // source: recomputed: Φ((T − y)/u); 200 000 draws scatter by less than 0.0012
      assertThat(Conformity.probabilityWithin(figure, (10 + 2 * z) * UM))
          .isCloseTo(Distributions.normal(z), within(0.004));
    }
  }

  @Test
  void theGuardBandIsZTimesU() {
    // source: from memory: ISO 14253-1:2017, one-sided guard band 1.6449 u at 95 %
    assertThat(Conformity.guardBand(2 * UM)).isCloseTo(2 * 1.6449 * UM, within(1e-10));
    double u = 2 * UM;
    double limit = 15 * UM;
    assertThat(outcome(limit - Conformity.guardBand(u) - 1e-9, u, limit)).isEqualTo(Outcome.PROVEN);
    assertThat(outcome(limit - Conformity.guardBand(u) + 1e-9, u, limit))
        .isEqualTo(Outcome.NOT_PROVEN);
    assertThat(outcome(limit + Conformity.guardBand(u) - 1e-9, u, limit))
        .isEqualTo(Outcome.NOT_PROVEN);
    assertThat(outcome(limit + Conformity.guardBand(u) + 1e-9, u, limit))
        .isEqualTo(Outcome.DISPROVEN);
  }

  private static Outcome outcome(double value, double u, double limit) {
    Measured figure = Measured.exact(value, Unit.MICROMETRE).with(Cause.normal("a", "b"), u);
    return Conformity.outcome(Conformity.probabilityWithin(figure, limit));
  }

  @Test
  void anExactValueIsInOrOutAndTheLimitIsIn() {
    Measured exact = Measured.exact(15 * UM, Unit.MICROMETRE);
    assertThat(Conformity.probabilityWithin(exact, 15 * UM)).isEqualTo(1);
    assertThat(Conformity.probabilityWithin(exact, 14.9 * UM)).isEqualTo(0);
    Missing none = new Missing(Unit.MICROMETRE, Saying.of("made-missing", ""));
    assertThatThrownBy(() -> Conformity.probabilityWithin(none, 1))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void everyRowOfTheColletTableIsTheSources() throws IOException {
    // source: ISO 15488 Table 4, as quoted on a collet maker's technical page: all six rows
    List<String> lines =
        Files.readAllLines(Path.of("../cases/metrology/iso15488_collet_runout.csv"));
    int k = 0;
    for (String line : lines) {
      if (line.matches("[0-9.,]+")) {
        String[] cells = line.split(",");
        ColletTable.Row row = ColletTable.ROWS.get(k++);
        assertThat(row.above()).isEqualTo(Double.parseDouble(cells[0]));
        assertThat(row.upTo()).isEqualTo(Double.parseDouble(cells[1]));
        assertThat(row.distance()).isEqualTo(Double.parseDouble(cells[2]));
        assertThat(row.limit(1)).isCloseTo(Double.parseDouble(cells[3]) * 1e-3, within(1e-12));
        assertThat(row.limit(2)).isCloseTo(Double.parseDouble(cells[4]) * 1e-3, within(1e-12));
      }
    }
    assertThat(k).isEqualTo(ColletTable.ROWS.size()).isEqualTo(6);
  }

  // source: ISO 15488 Table 4, as quoted on a collet maker's technical page: 1 mm is in its first
  // row
  @ParameterizedTest
  @CsvSource({
    "1, 6",
    "1.6, 6",
    "1.61, 10",
    "3, 10",
    "3.175, 16",
    "6, 16",
    "26, 50",
    "0.9,",
    "26.1,"
  })
  void aBoreHasItsRow(double bore, Double distance) {
    assertThat(ColletTable.row(bore * 1e-3).map(ColletTable.Row::distance))
        .isEqualTo(Optional.ofNullable(distance));
  }

  // source: recomputed: e_per = 9549.297 G / n, ISO 21940-11, as quoted in a text on balancing
  @ParameterizedTest
  @CsvSource({
    "1000, 23.873",
    "3000, 7.958",
    "6000, 3.979",
    "10000, 2.387",
    "12000, 1.989",
    "20000, 1.194",
    "24000, 0.995",
    "30000, 0.796",
    "60000, 0.398"
  })
  void thePermittedUnbalanceFallsWithTheSpeed(double rpm, double um) {
    assertThat(ToolBalance.permitted(rpm / 60)).isCloseTo(um * UM, within(0.0006 * UM));
  }
}
