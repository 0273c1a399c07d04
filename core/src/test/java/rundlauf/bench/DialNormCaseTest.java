package rundlauf.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Unit;

/** The rows of the dial norm, and which of them a dial gets. */
class DialNormCaseTest {
  @Test
  void everyRowIsTheSources() throws IOException {
    // source: JIS B 7503:2011, as quoted in a gauge maker's catalogue (2016): all 19 rows
    List<String> lines =
        Files.readAllLines(Path.of("../cases/metrology/jis_b7503_2011_mpe_um.csv"));
    List<DialNorm.Row> rows = new ArrayList<>();
    for (String line : lines) {
      if (line.matches("[0-9].*")) {
        rows.add(row(line.split(",")));
      }
    }
    assertThat(rows).hasSize(19);
    assertThat(DialNorm.ROWS).isEqualTo(rows);
  }

  private static DialNorm.Row row(String[] cells) {
    double[] n = new double[cells.length];
    for (int i = 0; i < cells.length; i++) {
      n[i] = i == 3 ? 0 : Double.parseDouble(cells[i]);
    }
    boolean small = cells[3].startsWith("under");
    var errors = new DialNorm.Errors(n[6], n[7], n[8], n[9]);
    return new DialNorm.Row(Math.rint(n[0] * 1000), n[1], n[2], small, n[4], n[5], errors);
  }

  // source: JIS B 7503:2011, as quoted in a gauge maker's catalogue (2016): error over the range
  @ParameterizedTest
  @CsvSource({
    "0.01, 10, false, 15",
    "0.01, 10, true, 20",
    "0.01, 10, , 20",
    "0.01, 5, false, 12",
    "0.01, 5.01, false, 15",
    "0.01, 50, , 40",
    "0.01, 50, true, ",
    "0.002, 1, , 6",
    "0.002, 1, false, ",
    "0.0127, 5, , ",
    "0.01, 101, , "
  })
  void aDialGetsTheRowOfItsDivisionRangeAndBezel(
      double division, double range, Boolean small, Double whole) {
    Optional<DialNorm.Row> row = DialNorm.row(mm(division), mm(range), Optional.ofNullable(small));
    assertThat(row.map(r -> r.errors().range())).isEqualTo(Optional.ofNullable(whole));
  }

  @Test
  void theSmallBezelsErrorsAreNowhereLess() {
    for (DialNorm.Row small : DialNorm.ROWS) {
      DialNorm.row(mm(small.division() / 1000), mm(small.upTo()), Optional.of(false))
          .filter(large -> small.small())
          .ifPresent(
              large -> {
                assertThat(small.retrace()).isGreaterThanOrEqualTo(large.retrace());
                assertThat(small.repeatability()).isGreaterThanOrEqualTo(large.repeatability());
                var s = small.errors();
                var l = large.errors();
                assertThat(s.tenthTurn()).isGreaterThanOrEqualTo(l.tenthTurn());
                assertThat(s.halfTurn()).isGreaterThanOrEqualTo(l.halfTurn());
                assertThat(s.turn()).isGreaterThanOrEqualTo(l.turn());
                assertThat(s.range()).isGreaterThanOrEqualTo(l.range());
              });
    }
  }

  private static Quantity mm(double value) {
    return Quantity.exact(Unit.MILLIMETRE.toSi(value), Unit.MILLIMETRE);
  }
}
