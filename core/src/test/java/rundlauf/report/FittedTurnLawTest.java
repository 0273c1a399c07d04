package rundlauf.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rundlauf.maths.Samples;
import rundlauf.maths.Stream;
import rundlauf.quantity.DrawnVector;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.readings.RunoutReadings.Sweep;
import rundlauf.reduce.runout.Runout;

class FittedTurnLawTest {
  private static final Missing NONE = new Missing(Unit.MICROMETRE, Saying.of("swing-only", ""));
  private static final double A = 30e-6;
  private static final double B = -10e-6;
  private static final double SIGMA = 2e-6;

  private static Runout.Station station(Samples curve, List<Integer> orders) {
    Stream stream = Stream.of(11, "band");
    int n = 20_000;
    var vector =
        new DrawnVector(
            stream.gaussians(n).map(x -> A + SIGMA * x),
            stream.gaussians(n).map(x -> B + SIGMA * x),
            new LinkedHashMap<>());
    return new Runout.Station(
        new Sweep(
            OptionalDouble.empty(),
            1,
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            Samples.of(0, Math.PI, 5 * Math.PI / 2, -Math.PI / 2),
            Samples.of(10e-6, 20e-6, 30e-6, 40e-6),
            OptionalDouble.empty(),
            1),
        NONE,
        NONE,
        NONE,
        NONE,
        List.of(),
        NONE,
        curve,
        orders,
        Optional.of(vector));
  }

  @Test
  void theCurveIsTheFitWithoutItsMean() {
    FittedTurn turn = FittedTurn.of(station(Samples.of(15e-6, A, B, 4e-6, 3e-6), List.of(1, 3)));
    assertThat(turn.angles().toArray())
        .containsExactly(new double[] {0, Math.PI, Math.PI / 2, 3 * Math.PI / 2}, within(1e-12));
    assertThat(turn.readings().toArray())
        .containsExactly(new double[] {-5e-6, 5e-6, 15e-6, 25e-6}, within(1e-15));
    // source: recomputed: A cos θ + B sin θ + 4 cos 3θ + 3 sin 3θ at 0, 180, 90 and 270 degrees
    assertThat(turn.fit().toArray())
        .containsExactly(new double[] {34e-6, -34e-6, -13e-6, 13e-6}, within(1e-15));
  }

  @Test
  void theBandHoldsNinetyFivePercentOfNormalDraws() {
    FittedTurn turn = FittedTurn.of(station(Samples.of(0, A, B), List.of(1)));
    for (int i = 0; i < turn.gridFit().size(); i++) {
      double half = (turn.gridHigh().get(i) - turn.gridLow().get(i)) / 2;
      // source: recomputed: 95 % of a normal distribution lie within 1.960 sigma
      assertThat(half).isCloseTo(1.960 * SIGMA, within(0.05 * SIGMA));
      double middle = (turn.gridHigh().get(i) + turn.gridLow().get(i)) / 2;
      assertThat(middle).isCloseTo(turn.gridFit().get(i), within(0.05 * SIGMA));
    }
  }

  @Test
  void halfATurnOnTheBandIsMirrored() {
    FittedTurn turn = FittedTurn.of(station(Samples.of(0, A, B), List.of(1)));
    int half = (turn.gridFit().size() - 1) / 2;
    for (int i = 0; i <= half; i++) {
      assertThat(turn.gridLow().get(i + half)).isCloseTo(-turn.gridHigh().get(i), within(1e-12));
    }
  }
}
