package rundlauf.report;

import java.util.List;
import rundlauf.bench.Bench;
import rundlauf.compare.Comparison;

/**
 * What a report is made from.
 *
 * @param outcomes of every trial, in the bench's order
 * @param comparison of its setups, by the last trial of each kind
 */
public record BenchResults(Bench bench, List<Outcome> outcomes, Comparison comparison) {
  public BenchResults {
    outcomes = List.copyOf(outcomes);
  }
}
