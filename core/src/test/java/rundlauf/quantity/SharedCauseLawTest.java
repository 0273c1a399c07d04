package rundlauf.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import rundlauf.maths.Draws;
import rundlauf.maths.Samples;

class SharedCauseLawTest {
  private static final Draws DRAWS = new Draws(3, 200_000);
  private static final Cause DIAL = Cause.rectangular("indicator/dial", "limit-of-error");

  @Test
  void differenceOfTwoFiguresReadWithOneDialIsTheSameByBothForms() {
    Measured a = tip("a", 30e-6, 0.02 * 30e-6);
    Measured b = tip("b", 25e-6, 0.02 * 25e-6);
    Measured linear = a.minus(b);
    Drawn drawn = Drawn.through(x -> x[0] - x[1], Unit.MICROMETRE, DRAWS, a, b);
    Figure.Estimate one = linear.estimate().orElseThrow();
    Figure.Estimate other = drawn.estimate().orElseThrow();
    // tolerance: four standard errors of 200000 draws
    assertThat(other.value()).isCloseTo(one.value(), within(0.012 * one.u()));
    assertThat(other.u()).isCloseTo(one.u(), within(0.008 * one.u()));
    assertThat(other.interval().low()).isCloseTo(one.interval().low(), within(0.03 * one.u()));
    assertThat(other.interval().high()).isCloseTo(one.interval().high(), within(0.03 * one.u()));
    assertThat(drawn.budget().stream().map(Figure.Share::cause))
        .containsExactlyElementsOf(linear.budget().stream().map(Figure.Share::cause).toList());
    for (int i = 0; i < linear.budget().size(); i++) {
      double u = linear.budget().get(i).u();
      assertThat(drawn.budget().get(i).u()).isCloseTo(u, within(1e-9 * u));
    }
  }

  @Test
  void whatIsSharedCancelsAndDoesNotAdd() {
    Measured a = tip("a", 30e-6, 5e-6);
    Measured b = tip("b", 25e-6, 5e-6);
    assertThat(a.minus(b).u()).isCloseTo(Math.sqrt(2) * 0.28e-6, within(1e-15));
    assertThat(a.plus(b).u()).isCloseTo(Math.hypot(10e-6, Math.sqrt(2) * 0.28e-6), within(1e-15));
    Figure difference = Drawn.through(x -> x[0] - x[1], Unit.MICROMETRE, DRAWS, a, b);
    assertThat(difference.estimate().orElseThrow().u())
        .isCloseTo(Math.sqrt(2) * 0.28e-6, within(0.003e-6));
  }

  @Test
  void aFigureLessItselfIsExactlyNothing() {
    Measured a = tip("a", 30e-6, 5e-6);
    assertThat(a.minus(a).u()).isCloseTo(0, within(1e-20));
    Drawn none = Drawn.through(x -> x[0] - x[1], Unit.MICROMETRE, DRAWS, a, a);
    assertThat(none.draws(DRAWS).max()).isEqualTo(0);
  }

  @Test
  void orderOfComputingDoesNotMatter() {
    Samples first = tip("a", 30e-6, 5e-6).draws(DRAWS);
    tip("b", 1e-6, 1e-6).draws(DRAWS);
    assertThat(tip("a", 30e-6, 5e-6).draws(DRAWS)).isEqualTo(first);
  }

  @Test
  void weightsThatTwoFiguresShareCountOnce() {
    Draws few = new Draws(3, 200);
    Samples values = Samples.generate(200, i -> i);
    Samples weights = Samples.generate(200, i -> i < 100 ? 3 : 1);
    Drawn a = Drawn.of(Unit.ONE, values, weights, java.util.Map.of());
    Drawn twice = Drawn.of(Unit.ONE, values.map(x -> 2 * x), weights, java.util.Map.of());
    Drawn sum = Drawn.through(x -> x[0] + x[1], Unit.ONE, few, a, twice);
    assertThat(sum.value()).isCloseTo(3 * a.value(), within(1e-9));
    assertThat(sum.estimate().orElseThrow().u())
        .isCloseTo(3 * a.estimate().orElseThrow().u(), within(1e-9));
  }

  private static Measured tip(String name, double value, double scale) {
    return Measured.exact(value, Unit.MICROMETRE)
        .with(Cause.normal("trials/" + name, "scatter"), 0.28e-6)
        .with(DIAL, scale);
  }
}
