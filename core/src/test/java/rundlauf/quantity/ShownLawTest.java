package rundlauf.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rundlauf.maths.Stream;

/** An angle is shown in the first turn, and nothing else about a figure changes. */
class ShownLawTest {
  private static final Cause CAUSE = Cause.normal("law", "angle");

  @Test
  void anyAngleComesIntoTheFirstTurnWithItsInterval() {
    Stream stream = Stream.of(11, "angles");
    for (int i = 0; i < 2000; i++) {
      double angle = 40 * (stream.uniform() - 0.5);
      double u = stream.uniform();
      Shown shown = shown(angle, u);
      assertThat(shown.value()).isBetween(0.0, Math.nextDown(360.0));
      assertThat(Math.cos(Math.toRadians(shown.value()))).isEqualTo(Math.cos(angle), within(1e-9));
      assertThat(Math.sin(Math.toRadians(shown.value()))).isEqualTo(Math.sin(angle), within(1e-9));
      // source: JCGM 100:2008, table G.1: 95 % of a normal distribution lie within 1.96 u
      double half = Math.toDegrees(1.959963984540054 * u);
      assertThat(shown.value() - shown.low()).isEqualTo(half, within(1e-6));
      assertThat(shown.high() - shown.value()).isEqualTo(half, within(1e-6));
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {-1e-17, -1e-14, -2 * Math.PI - 1e-15, 2 * Math.PI, 6 * Math.PI, 0, -0.0})
  void anAngleBesideAFullTurnIsNeverShownAsOne(double angle) {
    assertThat(shown(angle, 0.1).value()).isBetween(0.0, Math.nextDown(360.0));
  }

  @Test
  void aLengthIsShownInItsUnitOrInTheOneAskedFor() {
    Measured length = Measured.exact(-25.4e-6, Unit.MICROMETRE).with(CAUSE, 2.54e-6);
    assertThat(Shown.of(length).orElseThrow().value()).isEqualTo(-25.4, within(1e-12));
    // source: from memory: one inch is 25.4 mm exactly (ISO 31-1)
    assertThat(Shown.of(length, Unit.THOU).orElseThrow().value()).isEqualTo(-1, within(1e-12));
    assertThat(Shown.of(length, Unit.THOU).orElseThrow().u()).isEqualTo(0.1, within(1e-12));
  }

  @Test
  void aMissingFigureIsNotShown() {
    assertThat(Shown.of(new Missing(Unit.DEGREE, Saying.of("none", "")))).isEmpty();
  }

  @Test
  void anotherDimensionIsAMistakeOfOurs() {
    assertThatThrownBy(() -> Shown.of(Measured.exact(1, Unit.METRE), Unit.DEGREE))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("METRE cannot be shown in DEGREE");
  }

  private static Shown shown(double radians, double u) {
    return Shown.of(Measured.exact(radians, Unit.DEGREE).with(CAUSE, u)).orElseThrow();
  }
}
