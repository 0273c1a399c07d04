package rundlauf.report;

import java.util.List;
import java.util.Optional;
import rundlauf.quantity.Saying;
import rundlauf.reduce.sideload.Shares.Bound;

/**
 * Who gives way: the joints' shares of the travel at the load, from the load to the foot.
 *
 * @param share how shares are printed
 * @param bars in that order
 */
public record ShareBars(
    String id, Saying caption, Saying summary, Scale share, List<Bar> bars, Table twin)
    implements Chart {
  public ShareBars {
    bars = List.copyOf(bars);
  }

  /**
   * A joint's share of the whole, 0 to 1, and the ends of its interval.
   *
   * @param bound set where the share is only a limit of the true one
   */
  public record Bar(Saying name, double share, double low, double high, Optional<Bound> bound) {}

  /** Whether the bars together are the whole: none is only a limit. */
  public boolean whole() {
    return bars.stream().allMatch(bar -> bar.bound().isEmpty());
  }
}
