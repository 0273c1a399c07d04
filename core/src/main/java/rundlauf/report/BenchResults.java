package rundlauf.report;

import java.util.List;
import java.util.Optional;
import rundlauf.quantity.Quantity;

/**
 * What a report is made from.
 *
 * @param bench its name as typed
 * @param notes as typed
 * @param setups in the bench's order
 * @param outcomes every trial, in the bench's order
 */
public record BenchResults(
    String bench, Optional<String> notes, List<SetupParts> setups, List<Outcome> outcomes) {
  public BenchResults {
    setups = List.copyOf(setups);
    outcomes = List.copyOf(outcomes);
  }

  /** What a setup is put together from, by the bench's names. */
  public record SetupParts(
      String name,
      String spindle,
      Optional<String> holder,
      Optional<String> cutter,
      Optional<Quantity> stickout) {}
}
