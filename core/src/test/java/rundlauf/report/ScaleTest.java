package rundlauf.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rundlauf.maths.Samples;
import rundlauf.quantity.Unit;

class ScaleTest {
  @ParameterizedTest
  @CsvSource({"10, 30, 0", "10, 12.5, 1", "10, 12.25, 2", "10, 12.225, 2", "0, 0, 0"})
  void showsTheFewestDecimalsThatTellAll(double first, double second, int decimals) {
    Samples si = Samples.of(first, second).map(Unit.MICROMETRE::toSi);
    assertThat(Scale.showing(Unit.MICROMETRE, si, 2))
        .isEqualTo(new Scale(Unit.MICROMETRE, decimals));
  }

  @Test
  void aThirdOfATurnIsNotTakenForAWholeNumber() {
    assertThat(Scale.showing(Unit.DEGREE, Samples.of(2), 3).decimals()).isEqualTo(3);
  }

  @Test
  void decimalsBelowNoneAreRefused() {
    assertThatThrownBy(() -> new Scale(Unit.RPM, -1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("decimals -1, accepted 0 to 6");
  }

  @ParameterizedTest
  @CsvSource({"1, 1", "1.01, 1.4", "19, 20", "21, 30", "61, 80", "81, 100", "0.0037, 0.004"})
  void aSpanIsRoundedUp(double largest, double span) {
    assertThat(PolarCharts.roundUp(largest)).isCloseTo(span, within(span));
  }

  private static org.assertj.core.data.Offset<Double> within(double span) {
    return org.assertj.core.data.Offset.offset(1e-12 * span);
  }
}
