package rundlauf.report;

import java.util.List;
import rundlauf.bench.Bench;

/**
 * What a report is made from.
 *
 * @param outcomes of every trial, in the bench's order
 */
public record BenchResults(Bench bench, List<Outcome> outcomes) {
  public BenchResults {
    outcomes = List.copyOf(outcomes);
  }
}
