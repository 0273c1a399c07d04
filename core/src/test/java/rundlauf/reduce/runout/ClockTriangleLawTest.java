package rundlauf.reduce.runout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The turns that leave least, against a grid of all turns. */
class ClockTriangleLawTest {
  private static final int GRID = 720;

  private static double[] vector(double length, double degrees) {
    double angle = Math.toRadians(degrees);
    return new double[] {length * Math.cos(angle), length * Math.sin(angle)};
  }

  private static double left(double[] still, double[] one, double[] two, double[] turns) {
    double a = still[0] + along(one, turns[0]) + along(two, turns[1]);
    double b = still[1] + across(one, turns[0]) + across(two, turns[1]);
    return Math.hypot(a, b);
  }

  private static double along(double[] v, double turn) {
    return v[0] * Math.cos(turn) + v[1] * Math.sin(turn);
  }

  private static double across(double[] v, double turn) {
    return v[1] * Math.cos(turn) - v[0] * Math.sin(turn);
  }

  private static double least(double[] still, double[] one, double[] two) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < GRID; i++) {
      for (int j = 0; j < GRID; j++) {
        double[] turns = {2 * Math.PI * i / GRID, 2 * Math.PI * j / GRID};
        least = Math.min(least, left(still, one, two, turns));
      }
    }
    return least;
  }

  @ParameterizedTest
  @CsvSource({
    "7, 70, 13, 200, 9, 20",
    "7, 70, 13, 200, 3, 20",
    "20, 310, 4, 15, 5, 100",
    "3, 0, 4, 90, 5, 180",
    "5, 0, 5, 0, 5, 0",
    "2, 40, 3, 50, 30, 60",
    "0, 0, 6, 123, 6, 10",
    "0, 0, 8, 123, 6, 10",
    "6, 12, 0, 0, 6, 200",
    "6, 12, 2, 300, 0, 0"
  })
  void noTurnsOfTheGridLeaveLess(double s, double sAt, double c, double cAt, double h, double hAt) {
    double[] still = vector(s, sAt);
    double[] one = vector(c, cAt);
    double[] two = vector(h, hAt);
    double grid = least(still, one, two);
    double longest = Math.max(s, Math.max(c, h));
    double closed = Math.max(0, 2 * longest - s - c - h);
    for (double[] turns : ClockTriangle.turns(still, one, two)) {
      assertThat(left(still, one, two, turns)).isLessThanOrEqualTo(grid + 1e-9);
      // source: recomputed: three lengths leave the longest less the others, or close to nothing
      assertThat(left(still, one, two, turns)).isCloseTo(closed, within(1e-7));
      assertThat(turns[0]).isBetween(0.0, 2 * Math.PI);
      assertThat(turns[1]).isBetween(0.0, 2 * Math.PI);
    }
  }

  @ParameterizedTest
  @CsvSource({"70, 200", "0, 0", "350, 10", "10, 190"})
  void twoAreSetAgainstEachOther(double stillAt, double bodyAt) {
    double turn = ClockTriangle.opposite(Math.toRadians(stillAt), Math.toRadians(bodyAt));
    double[] nothing = {0, 0};
    double left = left(vector(7, stillAt), vector(5, bodyAt), nothing, new double[] {turn, 0});
    assertThat(left).isCloseTo(2, within(1e-9));
  }
}
