package rundlauf.reduce.runout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rundlauf.reduce.runout.RunoutCoverage.Cell;
import rundlauf.reduce.runout.RunoutCoverage.Outcome;
import rundlauf.simulated.Lobe;
import rundlauf.simulated.Nuisances;

/**
 * What nuisances that the reduction does not model do to the interval of an eccentricity: measured,
 * and what still holds.
 */
class NuisanceCoverageLawTest {
  private static final double UM = 1e-6;
  private static final double[] TRUTHS = {0, 1, 3, 10};

  /**
   * One nuisance alone.
   *
   * @param least share of intervals that must hold the truth for each truth with eight positions;
   *     0: no law holds
   */
  record Case(String name, Nuisances nuisances, List<Lobe> form, double least) {
    @Override
    public String toString() {
      return name;
    }
  }

  static List<Case> cases() {
    Nuisances none = Nuisances.clean();
    List<Case> all = new ArrayList<>();
    all.add(new Case("none", none, List.of(), 0.93));
    all.add(
        new Case(
            "angles off by up to 3°", none.withAngleError(Math.toRadians(3)), List.of(), 0.93));
    all.add(new Case("retrace 3 µm", none.withRetrace(3 * UM), List.of(), 0.90));
    all.add(new Case("sticky needle, 2 µm", none.withStick(2 * UM), List.of(), 0.90));
    all.add(new Case("drift 1 µm a reading", none.withDrift(UM), List.of(), 0.80));
    all.add(
        new Case(
            "every fifth reading to 20 µm",
            none.withDigitPreference(0.2, 20 * UM),
            List.of(),
            0.90));
    all.add(new Case("one slip of ten divisions", none.withSlip(4, 100 * UM), List.of(), 0));
    all.add(new Case("three-lobed pin, 5 µm", none, List.of(new Lobe(3, 5 * UM, 0.4)), 0.93));
    return all;
  }

  @ParameterizedTest
  @MethodSource("cases")
  void whatStillHolds(Case one) {
    Outcome sum = new Outcome(0, 0, 0);
    for (double truth : TRUTHS) {
      sum = sum.plus(outcome(one, 8, truth, 50));
    }
    assertThat(sum.share()).as(sum.toString()).isGreaterThanOrEqualTo(one.least() - 0.03);
  }

  @Tag("long")
  @Test
  void table() {
    for (int positions : new int[] {4, 8, 16}) {
      for (Case one : cases()) {
        StringBuilder row = new StringBuilder("| " + one + " | " + positions);
        List<Outcome> outcomes = new ArrayList<>();
        for (double truth : TRUTHS) {
          outcomes.add(outcome(one, positions, truth, 1000));
          row.append(" | ").append(outcomes.get(outcomes.size() - 1));
        }
        System.out.println(row.append(" |"));
        if (positions == 8) {
          assertThat(outcomes).as(row.toString()).allMatch(o -> o.share() >= one.least());
        }
      }
    }
  }

  private static Outcome outcome(Case one, int positions, double truth, int trials) {
    return RunoutCoverage.eccentricity(
        new Cell(positions, 0.2, truth), trials, one.nuisances(), one.form().toArray(new Lobe[0]));
  }
}
