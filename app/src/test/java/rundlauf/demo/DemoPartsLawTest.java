package rundlauf.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rundlauf.quantity.Saying;
import rundlauf.reduce.runout.BestClocking;
import rundlauf.reduce.runout.Runout;

/** Clocked trials of the demo bench against what spindle, collet and shank truly added. */
class DemoPartsLawTest {
  private static final List<String> PARTS = List.of("spindle", "collet", "shank");

  static Stream<String> clocked() throws IOException {
    return DemoTruth.all().stream()
        .filter(t -> t.figure().startsWith("parts["))
        .map(DemoTruth::trial)
        .distinct();
  }

  /** Eccentricities [m] and high spots [rad] of the three parts. */
  private static List<double[]> truth(String trial) throws IOException {
    List<double[]> parts = new ArrayList<>();
    for (int k = 0; k < PARTS.size(); k++) {
      String at = "parts[" + k + "].";
      parts.add(new double[] {truth(trial, at + "eccentricity"), truth(trial, at + "highSpot")});
    }
    return parts;
  }

  private static double truth(String trial, String figure) throws IOException {
    return DemoTruth.all().stream()
        .filter(t -> t.trial().equals(trial) && t.figure().equals(figure))
        .mapToDouble(DemoTruth::value)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void moreThanOneSpindleHasAGuiltyPart() throws IOException {
    assertThat(clocked()).hasSize(2);
  }

  @ParameterizedTest
  @MethodSource("clocked")
  void theGuiltyPartIsNamedRightly(String trial) throws IOException {
    List<double[]> parts = truth(trial);
    int guilty =
        IntStream.range(0, PARTS.size())
            .boxed()
            .max(Comparator.comparingDouble(k -> parts.get(k)[0]))
            .orElseThrow();
    List<Saying> blamed =
        DemoResults.of(trial).advice().stream()
            .filter(s -> s.code().equals("part-to-blame"))
            .toList();
    assertThat(blamed).hasSize(1);
    assertThat(blamed.get(0).args().toString()).contains("text=" + PARTS.get(guilty) + "]");
  }

  @ParameterizedTest
  @MethodSource("clocked")
  void theBestClockingHoldsItsTruthAndRunsTruer(String trial) throws IOException {
    BestClocking best = ((Runout) DemoResults.of(trial)).bestClocking();
    double[] clocks = {0, best.collet().orElseThrow(), best.shank().orElseThrow()};
    double so = tir(truth(trial), clocks);
    double instead = tir(truth(trial), new double[3]);
    assertThat(best.tir().estimate().orElseThrow().interval().holds(so)).isTrue();
    assertThat(best.insteadOf().estimate().orElseThrow().interval().holds(instead)).isTrue();
    assertThat(so).isLessThan(instead);
  }

  /** Twice the length of the sum of the parts, each turned forward by its clock angle. */
  private static double tir(List<double[]> parts, double[] clocks) {
    double x = 0;
    double y = 0;
    for (int k = 0; k < clocks.length; k++) {
      double spot = parts.get(k)[1] - clocks[k];
      x += parts.get(k)[0] * Math.cos(spot);
      y += parts.get(k)[0] * Math.sin(spot);
    }
    return 2 * Math.hypot(x, y);
  }
}
