package rundlauf.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What is printed is what was meant, and reads back. */
class FormatLawTest {
  static LongStream seeds() {
    return LongStream.range(0, 300);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void aQuantityReadsBack(long seed) {
    Random random = new Random(seed);
    List<Unit> units = List.of(Unit.values());
    for (int i = 0; i < 50; i++) {
      Unit unit = units.get(random.nextInt(units.size()));
      double value = unit.fromSi(random.nextGaussian() * Math.pow(10, random.nextInt(25) - 12));
      double half = random.nextBoolean() ? 0 : Math.abs(random.nextGaussian()) * 1e-3;
      Quantity q = new Quantity(unit.toSi(value), unit.toSi(half), unit);
      Quantity back =
          QuantityText.read(Format.typed(q), unit.dimension(), random.nextBoolean(), Place.NOWHERE);
      assertThat(back.si()).isCloseTo(q.si(), within(Math.abs(q.si()) * 1e-15));
      assertThat(back.halfWidth()).isCloseTo(q.halfWidth(), within(q.halfWidth() * 1e-15));
      assertThat(back.unit()).isEqualTo(unit);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "17.917792, 17.9 µm",
    "2.94838, 2.95 µm",
    "0.59841, 0.598 µm",
    "999.6, 1000 µm",
    "23740.6, 23741 µm",
    "-0.0123456, -0.0123 µm",
    "0, 0 µm"
  })
  void anAmountWorkedOutKeepsThreeDigitsAndItsWholeNumber(double value, String printed) {
    assertThat(Format.about(Unit.MICROMETRE.toSi(value), Unit.MICROMETRE)).isEqualTo(printed);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void aNumberKeepsFiveDigits(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < 50; i++) {
      double value = random.nextGaussian() * Math.pow(10, random.nextInt(31) - 15);
      double back = Double.parseDouble(Format.number(value));
      assertThat(back).isCloseTo(value, within(Math.abs(value) * 5e-5));
    }
  }

  @ParameterizedTest
  @CsvSource({
    "24000, 24000",
    "0.01, 0.01",
    "-0.0, 0",
    "2.5e-3, 0.0025",
    "123456, 123460",
    "1e12, 1E+12",
    "1e-9, 1E-9",
  })
  void numbersAreShort(double value, String printed) {
    assertThat(Format.number(value)).isEqualTo(printed);
  }

  @Test
  void anAmountCarriesItsUnit() {
    assertThat(Format.amount(1e-5, Unit.MILLIMETRE)).isEqualTo("0.01 mm");
    assertThat(Format.amount(0.5, Unit.ONE)).isEqualTo("0.5");
    assertThat(Format.amount(400, Unit.RPM)).isEqualTo("24000 rpm");
  }

  @Test
  void aNumberThatIsNoneIsOurMistake() {
    assertThatThrownBy(() -> Format.number(Double.NaN))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @ParameterizedTest
  @CsvSource({
    "100.02147, 0.00035, 100.02147",
    "28.05, 0.92, 28.05",
    "10.057, 27, 10",
    "1234.6, 130, 1230",
    "0.0001, 0.5, 0.00",
    "-0.001, 0.5, 0.00",
    "12.5, 0, 12.5",
    "12.5, Infinity, 12.5"
  })
  void aValueIsRoundedWithItsDoubt(double value, double u, String printed) {
    // source: JCGM 100:2008, 7.2.6: y = 10.057 62 Ω with u_c = 27 mΩ is rounded to 10.058 Ω
    assertThat(Format.rounded(10.05762, 0.027)).isEqualTo("10.058");
    // source: JCGM 100:2008, 7.2.2: m_S = 100.021 47 g with u_c = 0.35 mg
    assertThat(Format.rounded(value, u)).isEqualTo(printed);
  }
}
