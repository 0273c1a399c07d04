package rundlauf.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is read as a quantity, and what is refused and why. */
class QuantityTextTest {
  private static final Place PLACE = new Place("a.yaml", 3, 5, "indicator.division");

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0.01 mm     | LENGTH    | 1e-5",
        "0,01 mm     | LENGTH    | 1e-5",
        "0,125 mm    | LENGTH    | 1.25e-4",
        "000,125 mm  | LENGTH    | 1.25e-4",
        "12,3456 mm  | LENGTH    | 0.0123456",
        "1,23 mm     | LENGTH    | 0.00123",
        "1.234 mm    | LENGTH    | 0.001234",
        ".5mm        | LENGTH    | 5e-4",
        "5. mm       | LENGTH    | 5e-3",
        "+2.5e-3 m   | LENGTH    | 2.5e-3",
        "-2 deg      | ANGLE     | -0.03490658503988659",
        "−2 deg      | ANGLE     | -0.03490658503988659",
        "1/8 in      | LENGTH    | 0.003175",
        "5 µm        | LENGTH    | 5e-6",
        "5 μm        | LENGTH    | 5e-6",
        "1 1/s       | FREQUENCY | 1",
        "24000 rpm   | FREQUENCY | 400",
        "0.75        | NUMBER    | 0.75",
        "75 %        | NUMBER    | 0.75",
        "0.2 N m     | TORQUE    | 0.2",
        "20 degC     | TEMPERATURE | 20",
      })
  void isRead(String typed, Dimension dimension, double si) {
    Quantity q = QuantityText.read(typed, dimension, false, PLACE);
    assertThat(q.si()).isCloseTo(si, org.assertj.core.data.Offset.offset(Math.abs(si) * 1e-15));
    assertThat(q.hasLimits()).isFalse();
    assertThat(q.unit().dimension()).isEqualTo(dimension);
  }

  @Test
  void theUnitsOfTheInchAndPound() {
    // source: from memory: NIST SP 811 (2008), B.8: 1 inch is 0.0254 m exactly
    assertThat(si("1 in", Dimension.LENGTH)).isEqualTo(0.0254);
    assertThat(si("1000 thou", Dimension.LENGTH)).isCloseTo(0.0254, offset(1e-17));
    // source: from memory: NIST SP 811 (2008), B.8: 1 pound-force is 4.448222 N
    assertThat(si("1 lbf", Dimension.FORCE)).isCloseTo(4.448222, offset(5e-7));
    // source: from memory: NIST SP 811 (2008), B.8: 1 kilogram-force is 9.80665 N exactly
    assertThat(si("1 kgf", Dimension.FORCE)).isEqualTo(9.80665);
    // source: common practice, no source: 3.175 mm is 1/8 in
    assertThat(si("1/8 in", Dimension.LENGTH))
        .isCloseTo(si("3.175 mm", Dimension.LENGTH), offset(1e-18));
  }

  @Test
  void limitsAreAHalfWidth() {
    Quantity q = QuantityText.read("60 ± 0.5 mm", Dimension.LENGTH, false, PLACE);
    assertThat(q).isEqualTo(new Quantity(0.06, 0.0005, Unit.MILLIMETRE));
    // source: JCGM 100:2008, 4.3.7, equation 7: u = a/√3 of a rectangular distribution of
    // half-width a
    assertThat(q.u()).isCloseTo(0.000288675, offset(5e-10));
    Quantity mixed = QuantityText.read("60 mm ± 500 um", Dimension.LENGTH, false, PLACE);
    assertThat(mixed.si()).isEqualTo(q.si());
    assertThat(mixed.halfWidth()).isCloseTo(q.halfWidth(), offset(1e-18));
    assertThat(QuantityText.read("60±0,5 mm", Dimension.LENGTH, false, PLACE)).isEqualTo(q);
    assertThat(QuantityText.read("60 ± 0 mm", Dimension.LENGTH, false, PLACE).hasLimits())
        .isFalse();
  }

  @Test
  void blanksOfAnyKindPart() {
    assertThat(si("\u00a024000\u202frpm ", Dimension.FREQUENCY)).isEqualTo(400);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "''            | quantity-empty",
        "mm            | number-not-read",
        ". mm          | number-not-read",
        "- mm          | number-not-read",
        "--5 mm        | number-not-read",
        "NaN mm        | number-not-finite",
        "∞ mm          | number-not-finite",
        "infinity      | number-not-finite",
        "1/0 mm        | number-not-finite",
        "1e400 mm      | number-out-of-range",
        "1e30 mm       | number-out-of-range",
        "1e-400 mm     | number-out-of-range",
        "1 000 mm      | digits-parted",
        "1'000 mm      | digits-parted",
        "1.234,5 mm    | digits-parted",
        "1,234,567 mm  | digits-parted",
        "1/2/3 mm      | digits-parted",
        "1,234 mm      | comma-ambiguous",
        "-12,345 mm    | comma-ambiguous",
        "60 +- 1 mm    | limits-sign",
        "60 + - 1 mm   | limits-sign",
        "60 +/- 1 mm   | limits-sign",
        "± 1 mm        | limits-not-read",
        "60 ±          | limits-not-read",
        "60 ± 1 ± 1 mm | limits-not-read",
        "60 ± -1 mm    | limits-not-read",
        "60 mm ± 1     | unit-missing",
        "60            | unit-missing",
        "60 parsec     | unit-unknown",
        "60 Mm         | unit-unknown",
        "60 N ± 1 mm   | unit-of-another-kind",
        "60 rpm        | unit-of-another-kind",
      })
  void isRefused(String typed, String code) {
    Refused refused =
        catchThrowableOfType(
            Refused.class, () -> QuantityText.read(typed, Dimension.LENGTH, false, PLACE));
    assertThat(refused.saying().code()).isEqualTo(code);
    assertThat(refused.place()).isEqualTo(PLACE);
    assertThat(refused.saying().about()).isEqualTo("indicator.division");
  }

  @ParameterizedTest
  @ValueSource(strings = {"01 mm", "005 mm", "01"})
  void whereACommaPartsALeadingZeroIsALeftOver(String typed) {
    assertThatThrownBy(() -> QuantityText.read(typed, Dimension.LENGTH, true, PLACE))
        .hasMessageStartingWith("comma-parted");
    assertThatThrownBy(() -> QuantityText.bare(typed, Unit.MILLIMETRE, true, PLACE))
        .hasMessageStartingWith("comma-parted");
  }

  @Test
  void whereACommaPartsAWholeNumberWithoutUnitMayBeALeftOver() {
    assertThatThrownBy(() -> QuantityText.read("12000", Dimension.FREQUENCY, true, PLACE))
        .hasMessageStartingWith("unit-missing-or-comma");
    assertThatThrownBy(() -> QuantityText.read("0.01", Dimension.LENGTH, true, PLACE))
        .hasMessageStartingWith("unit-missing at");
    assertThat(QuantityText.read("0 mm", Dimension.LENGTH, true, PLACE).si()).isZero();
  }

  @Test
  void aCellHoldsABareNumber() {
    assertThat(QuantityText.bare(" 0,25 ", Unit.MILLIMETRE, false, PLACE)).isEqualTo(2.5e-4);
    assertThat(QuantityText.bare("1/4", Unit.INCH, false, PLACE)).isEqualTo(0.00635);
    assertThatThrownBy(() -> QuantityText.bare("", Unit.MILLIMETRE, false, PLACE))
        .hasMessageStartingWith("cell-empty");
    assertThatThrownBy(() -> QuantityText.bare("5 mm", Unit.MILLIMETRE, false, PLACE))
        .hasMessageStartingWith("cell-has-unit");
    assertThatThrownBy(() -> QuantityText.bare("5 x", Unit.MILLIMETRE, false, PLACE))
        .hasMessageStartingWith("number-not-read");
  }

  @Test
  void aFiniteNumberMayOverflowInItsUnit() {
    assertThatThrownBy(() -> QuantityText.read("1e308 GPa", Dimension.PRESSURE, false, PLACE))
        .hasMessageStartingWith("number-out-of-range");
    assertThatThrownBy(() -> QuantityText.read("1 ± 1e308 GPa", Dimension.PRESSURE, false, PLACE))
        .hasMessageStartingWith("number-out-of-range");
  }

  @Test
  void aTypedMinusZeroIsZero() {
    assertThat(1 / si("-0 mm", Dimension.LENGTH)).isPositive();
  }

  private static double si(String typed, Dimension dimension) {
    return QuantityText.read(typed, dimension, false, PLACE).si();
  }

  private static org.assertj.core.data.Offset<Double> offset(double by) {
    return org.assertj.core.data.Offset.offset(by);
  }
}
