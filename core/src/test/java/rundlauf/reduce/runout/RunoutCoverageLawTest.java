package rundlauf.reduce.runout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rundlauf.reduce.runout.RunoutCoverage.Cell;
import rundlauf.reduce.runout.RunoutCoverage.Outcome;
import rundlauf.simulated.Nuisances;

/** The interval of an eccentricity read on a coarse dial holds the truth as often as it says. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class RunoutCoverageLawTest {
  private static final double[] TRUTHS = {0, 0.2, 0.5, 1, 2, 5, 10};
  private static final int POOLED = 30;
  private static final int LONG = 2000;

  /**
   * Positions and scatter (divisions) with the least share of trials whose interval must hold the
   * truth.
   */
  record Asked(int positions, double scatter, double least) {
    Cell at(double truth) {
      return new Cell(positions, scatter, truth);
    }
  }

  static List<Asked> asked() {
    List<Asked> all = new ArrayList<>();
    for (int positions : new int[] {4, 5, 8, 16, 24}) {
      for (double scatter : new double[] {0.05, 0.1, 0.3}) {
        all.add(new Asked(positions, scatter, 0.93));
      }
      if (positions >= 8) {
        all.add(new Asked(positions, 0.5, 0.93));
        all.add(new Asked(positions, 1, 0.90));
      }
    }
    return all;
  }

  @ParameterizedTest
  @MethodSource("asked")
  void pooledOverTruths(Asked asked) {
    Outcome sum = new Outcome(0, 0, 0);
    for (double truth : TRUTHS) {
      sum = sum.plus(RunoutCoverage.eccentricity(asked.at(truth), POOLED, Nuisances.clean()));
    }
    // 210 trials: three standard deviations of a share of 93 % are 5 %.
    assertThat(sum.share()).as(sum.toString()).isGreaterThanOrEqualTo(asked.least() - 0.05);
  }

  @Tag("long")
  @ParameterizedTest
  @MethodSource("asked")
  void eachCell(Asked asked) {
    StringBuilder row = new StringBuilder("| " + asked.positions() + " | " + asked.scatter());
    List<Outcome> outcomes = new ArrayList<>();
    for (double truth : TRUTHS) {
      Outcome outcome = RunoutCoverage.eccentricity(asked.at(truth), LONG, Nuisances.clean());
      outcomes.add(outcome);
      row.append(" | ").append(outcome);
    }
    System.out.println(row.append(" |"));
    assertThat(outcomes).as(row.toString()).allMatch(o -> o.share() >= asked.least());
  }
}
