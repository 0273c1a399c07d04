package rundlauf.maths;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class IsotonicCaseTest {
  @Test
  void poolsNeighboursThatFall() {
    Samples fit = Isotonic.fit(Samples.of(1, 3, 2, 4, 3.5, 5), Samples.of(1, 1, 1, 2, 1, 1));
    double last = (2 * 4 + 3.5) / 3;
    // source: recomputed: two falling pairs, each replaced by its weighted mean
    assertThat(fit).isEqualTo(Samples.of(1, 2.5, 2.5, last, last, 5));
  }

  @Test
  void poolsBackAsFarAsNeeded() {
    Samples fit = Isotonic.fit(Samples.of(4, 5, 1), Samples.of(1, 1, 1));
    // source: recomputed: 5 and 1 give 3, below 4, so all three are pooled to 10/3
    assertThat(fit.min()).isCloseTo(10 / 3.0, within(1e-12));
    assertThat(fit.max()).isCloseTo(10 / 3.0, within(1e-12));
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
  void isTheNearestRisingRow(int seed) {
    Stream stream = Stream.of(seed, "rising");
    int n = 2 + stream.index(7);
    Samples y = stream.gaussians(n);
    Samples weights = Samples.generate(n, i -> 0.2 + stream.uniform());
    Samples fit = Isotonic.fit(y, weights);
    double best = distance(fit, y, weights);
    for (int trial = 0; trial < 2000; trial++) {
      double[] other = new double[n];
      for (int i = 0; i < n; i++) {
        other[i] = fit.get(i) + 0.3 * stream.gaussian();
      }
      java.util.Arrays.sort(other);
      assertThat(distance(Samples.of(other), y, weights)).isGreaterThanOrEqualTo(best);
    }
    for (int i = 1; i < n; i++) {
      assertThat(fit.get(i)).isGreaterThanOrEqualTo(fit.get(i - 1));
    }
  }

  private static double distance(Samples a, Samples b, Samples weights) {
    double sum = 0;
    for (int i = 0; i < a.size(); i++) {
      sum += weights.get(i) * (a.get(i) - b.get(i)) * (a.get(i) - b.get(i));
    }
    return sum;
  }
}
