package rundlauf.reduce.runout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rundlauf.maths.LeastSquares;
import rundlauf.maths.Samples;
import rundlauf.maths.Stream;

/** The clampings asked for, against every other choice, their doubt taken from a real fit. */
class NextClocksLawTest {
  private static final double QUARTER = Math.PI / 2;

  private static Clock clock(double colletDegrees, double shankDegrees) {
    return new Clock(Math.toRadians(colletDegrees), Math.toRadians(shankDegrees));
  }

  /** Half the trace of (XᵀX)⁻¹ of the six real unknowns. */
  private static double fitted(List<Clock> clocks) {
    double[][] rows = new double[2 * clocks.size()][];
    for (int j = 0; j < clocks.size(); j++) {
      double c = clocks.get(j).collet();
      double s = clocks.get(j).shank();
      rows[2 * j] = new double[] {1, 0, Math.cos(c), Math.sin(c), Math.cos(s), Math.sin(s)};
      rows[2 * j + 1] = new double[] {0, 1, -Math.sin(c), Math.cos(c), -Math.sin(s), Math.cos(s)};
    }
    LeastSquares fit = LeastSquares.fit(rows, Samples.generate(rows.length, i -> 0));
    double trace = 0;
    for (int i = 0; i < 6; i++) {
      trace += fit.unscaled(i, i);
    }
    return trace / 2;
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void theTraceIsThatOfTheFit(long seed) {
    Stream stream = Stream.of(seed, "clocks");
    List<Clock> clocks = new ArrayList<>();
    for (int j = 0; j < 5; j++) {
      clocks.add(new Clock(7 * stream.uniform(), 7 * stream.uniform()));
    }
    double trace = NextClocks.trace(clocks);
    assertThat(trace).isCloseTo(fitted(clocks), within(1e-9 * trace));
  }

  @Test
  void whatCannotBeToldApartHasNoTrace() {
    assertThat(NextClocks.trace(List.of(clock(0, 0), clock(180, 0), clock(90, 0)))).isInfinite();
    assertThat(NextClocks.trace(List.of(clock(0, 0), clock(180, 90)))).isInfinite();
  }

  @Test
  void afterOneClampingThreeMoreMakeAnOrthogonalDesign() {
    List<Clock> all = new ArrayList<>(List.of(clock(0, 0)));
    List<Clock> next = NextClocks.after(PartsDesign.of(all));
    assertThat(next).hasSize(3);
    all.addAll(next);
    // source: recomputed: an orthogonal design of c clampings has trace 3/c, and none has less
    assertThat(NextClocks.trace(all)).isCloseTo(0.75, within(1e-12));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void noOtherChoiceInQuarterTurnsTellsMore(long seed) {
    Stream stream = Stream.of(seed, "taken");
    List<Clock> taken = new ArrayList<>();
    double shank = stream.index(4) * QUARTER;
    int clampings = 1 + stream.index(3);
    for (int j = 0; j < clampings; j++) {
      taken.add(new Clock(stream.index(4) * QUARTER, shank));
    }
    List<Clock> next = NextClocks.after(PartsDesign.of(taken));
    assertThat(next.size()).isBetween(1, 3);
    List<Clock> chosen = new ArrayList<>(taken);
    chosen.addAll(next);
    double best = NextClocks.trace(chosen);
    assertThat(best).isFinite();
    for (int code = 0; code < Math.pow(16, next.size()); code++) {
      List<Clock> other = new ArrayList<>(taken);
      for (int k = 0, rest = code; k < next.size(); k++, rest /= 16) {
        other.add(new Clock(rest % 4 * QUARTER, rest / 4 % 4 * QUARTER));
      }
      assertThat(NextClocks.trace(other)).isGreaterThan(best - 1e-9);
    }
  }
}
