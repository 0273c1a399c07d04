package rundlauf.render.plain;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rundlauf.quantity.Cause;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Measured;
import rundlauf.quantity.Unit;

/** Numbers as they are set at the machine. */
class CutWordsTest {
  private static Figure figure(double value, double u, Unit unit) {
    return Measured.exact(unit.toSi(value), unit).with(Cause.normal("made", "made"), unit.toSi(u));
  }

  @ParameterizedTest
  @CsvSource({
    "0.4321, 0.43 s",
    "7.7, 7.7 s",
    "119.4, 119 s",
    "121, 2 min",
    "248.2, 4.1 min",
    "5084.76, 85 min",
    "7300, 2 h",
    "36000, 10 h"
  })
  void aTimeHasTwoDigitsAndNeverLessThanItsWholeNumber(double seconds, String shown) {
    assertThat(CutWords.time(seconds)).isEqualTo(shown);
  }

  @Test
  void anIntervalTooNarrowToMatterIsLeftOut() {
    assertThat(CutWords.value(figure(5.84, 1e-6, Unit.MICROMETRE))).isEqualTo("5.84 µm");
    assertThat(CutWords.value(figure(5.84, 0.5, Unit.MICROMETRE))).startsWith("5.84 µm (");
  }

  @ParameterizedTest
  @CsvSource({
    "137.8241, 0, 137.8 µm",
    "23740.4, 0, 23740 µm",
    "0.0085264, 0, 0.008526 µm",
    "18.23, 4, 18.2 µm"
  })
  void besideALimitAValueHasTheDigitsThatItsDoubtBears(double value, double u, String shown) {
    assertThat(CutWords.alone(figure(value, u, Unit.MICROMETRE))).isEqualTo(shown);
  }

  @Test
  void aCountHasNoDecimals() {
    assertThat(CutWords.count(figure(2, 0, Unit.ONE))).isEqualTo("2");
    assertThat(CutWords.count(figure(2, 0.6, Unit.ONE))).isEqualTo("2 (1 to 3)");
  }
}
