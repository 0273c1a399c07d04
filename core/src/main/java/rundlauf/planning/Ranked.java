package rundlauf.planning;

import java.util.Comparator;
import rundlauf.cutting.prediction.Prediction;
import rundlauf.safety.Standing;

/**
 * A setup's plan and what it is ranked by, best first: inspected before not inspected before held,
 * feasible before not; of feasible ones the quickest, of others the likeliest.
 *
 * @param secondsPerMetre to cut the feature [s/m]; infinite where nothing could be tried
 */
record Ranked(SetupPlan plan, double secondsPerMetre) implements Comparable<Ranked> {
  private static final Comparator<Ranked> BEST_FIRST =
      Comparator.<Ranked>comparingInt(ranked -> standing(ranked.plan().standing()))
          .thenComparing(ranked -> !ranked.plan().feasible())
          .thenComparingDouble(Ranked::fitness)
          .thenComparingDouble(Ranked::secondsPerMetre);

  @Override
  public int compareTo(Ranked other) {
    return BEST_FIRST.compare(this, other);
  }

  private static int standing(Standing standing) {
    return switch (standing) {
      case INSPECTED -> 0;
      case NOT_INSPECTED -> 1;
      case HELD -> 2;
    };
  }

  /** Less is better. */
  private double fitness() {
    return plan.feasible()
        ? secondsPerMetre
        : -plan.best().map(Prediction::probability).orElse(-1.0);
  }
}
