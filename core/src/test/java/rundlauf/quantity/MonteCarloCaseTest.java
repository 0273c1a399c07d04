package rundlauf.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rundlauf.maths.Draws;

/** The worked examples of JCGM 101:2008, by draws. */
class MonteCarloCaseTest {
  private static final Draws DRAWS = new Draws(Draws.DEFAULT_SEED, 400_000);

  @Test
  void sumOfFourNormals() {
    Drawn sum = sum(normal(1), normal(2), normal(3), normal(4));
    // source: from memory: JCGM 101:2008, 9.2.2: y 0, u 2, 95 % ±3.92; exact ±3.919928
    assertThat(sum.value()).isCloseTo(0, within(0.015));
    assertThat(sum.estimate().orElseThrow().u()).isCloseTo(2, within(0.01));
    isSymmetric(sum, 3.919928, within(0.03));
  }

  @Test
  void sumOfFourRectangulars() {
    Drawn sum = sum(rectangular(1, 1), rectangular(2, 1), rectangular(3, 1), rectangular(4, 1));
    // source: from memory: JCGM 101:2008, 9.2.3: u 2, 95 % ±3.88; exact ±2√3(2 − (3/5)^¼)
    assertThat(sum.estimate().orElseThrow().u()).isCloseTo(2, within(0.01));
    isSymmetric(sum, 3.879407, within(0.02));
  }

  @Test
  void oneRectangularRulesTheOthers() {
    Drawn sum = sum(rectangular(1, 1), rectangular(2, 1), rectangular(3, 1), rectangular(4, 10));
    // source: from memory: JCGM 101:2008, 9.2.4: u 10.1, 95 % ±17.0 where first order says ±19.9
    assertThat(sum.estimate().orElseThrow().u()).isCloseTo(10.148892, within(0.03));
    isSymmetric(sum, 17.01, within(0.05));
    Measured first =
        Measured.through(
            x -> x[0] + x[1] + x[2] + x[3],
            Unit.ONE,
            rectangular(1, 1),
            rectangular(2, 1),
            rectangular(3, 1),
            rectangular(4, 10));
    assertThat(first.interval(0.95).high()).isCloseTo(19.8915, within(0.0001));
  }

  @ParameterizedTest
  @CsvSource({
    "0,     0,   50,   50,      1.266,   184.444",
    "0.010, 0,   150,  111.803, 8.547,   427.123",
    "0.050, 0,   2550, 502.494, 1638.48, 3603.36",
  })
  void squaredMagnitudeNearZero(
      double x1, double rho, double y, double u, double low, double high) {
    Drawn square = squaredMagnitude(x1, rho);
    // source: recomputed: exact figures of the model of JCGM 101:2008, 9.4.2, uncorrelated inputs
    assertThat(meanOf(square)).isCloseTo(y * 1e-6, within(0.008 * u * 1e-6));
    assertThat(square.estimate().orElseThrow().u()).isCloseTo(u * 1e-6, within(0.008 * u * 1e-6));
    Interval interval = square.estimate().orElseThrow().interval();
    assertThat(interval.low()).isCloseTo(low * 1e-6, within(0.005 * u * 1e-6 + 0.002 * low * 1e-6));
    assertThat(interval.high()).isCloseTo(high * 1e-6, within(0.03 * u * 1e-6));
  }

  @ParameterizedTest
  @CsvSource({"0, 50, 67.268", "0.010, 150, 120.520", "0.050, 2550, 504.505"})
  void squaredMagnitudeOfCorrelatedInputs(double x1, double y, double u) {
    Drawn square = squaredMagnitude(x1, 0.9);
    // source: from memory: JCGM 101:2008, 9.4.3, correlation 0.9: u 67, 121, 505; digits recomputed
    assertThat(meanOf(square)).isCloseTo(y * 1e-6, within(0.008 * u * 1e-6));
    assertThat(square.estimate().orElseThrow().u()).isCloseTo(u * 1e-6, within(0.008 * u * 1e-6));
  }

  @Test
  void firstOrderSeesNoDoubtAtZero() {
    Measured one = normal(1);
    Measured squared = Measured.through(x -> x[0] * x[0] + x[1] * x[1], Unit.ONE, one, normal(2));
    // source: from memory: JCGM 101:2008, Table 8: first order gives u = 0 at x1 = x2 = 0
    assertThat(squared.u()).isEqualTo(0);
  }

  private static Drawn squaredMagnitude(double x1, double rho) {
    Cause shared = Cause.normal("pair", "shared");
    Cause own = Cause.normal("pair", "own");
    Measured first = Measured.exact(x1, Unit.ONE).with(shared, 0.005);
    Measured second =
        Measured.exact(0, Unit.ONE)
            .with(shared, 0.005 * rho)
            .with(own, 0.005 * Math.sqrt(1 - rho * rho));
    return Drawn.through(x -> x[0] * x[0] + x[1] * x[1], Unit.ONE, DRAWS, first, second);
  }

  private static double meanOf(Drawn figure) {
    return figure.draws(DRAWS).mean();
  }

  private static Drawn sum(Figure... inputs) {
    return Drawn.through(x -> x[0] + x[1] + x[2] + x[3], Unit.ONE, DRAWS, inputs);
  }

  private static Measured normal(int name) {
    return Measured.exact(0, Unit.ONE).with(Cause.normal("x" + name, "itself"), 1);
  }

  private static Measured rectangular(int name, double u) {
    return Measured.exact(0, Unit.ONE).with(Cause.rectangular("x" + name, "itself"), u);
  }

  private static void isSymmetric(Drawn figure, double half, Offset<Double> tolerance) {
    Interval interval = figure.estimate().orElseThrow().interval();
    assertThat(interval.low()).isCloseTo(-half, tolerance);
    assertThat(interval.high()).isCloseTo(half, tolerance);
  }
}
