package rundlauf.reduce.sideload;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Saying;

/**
 * Which joint of the row gives way how much, carried to the load.
 *
 * @param entries from the load to the foot; together they are the whole row; empty where the trial
 *     cannot bear them
 * @param sayings why there are none, what was assumed, and what would tell more
 */
public record Shares(List<Share> entries, List<Saying> sayings) {
  public Shares {
    entries = List.copyOf(entries);
    sayings = List.copyOf(sayings);
  }

  /**
   * One joint, or several that the readings do not part.
   *
   * @param joint its name; {@code shank} is the shank's own bending; names of joints that are not
   *     told apart are joined by a plus
   * @param compliance its part of the travel at the load, over the force [m/N]
   * @param share the same over the whole [1]
   * @param bound set where the value is only a limit of the true one; the interval then holds the
   *     true one nevertheless
   */
  public record Share(String joint, Figure compliance, Figure share, Optional<Bound> bound) {}

  /** What a value is that is only a limit. */
  public enum Bound {
    AT_LEAST,
    AT_MOST
  }

  /** None, and why. */
  public static Shares none(List<Saying> why) {
    return new Shares(List.of(), why);
  }

  /** What there is to say where shares were meant to be had: more than one body was touched. */
  List<Saying> advice() {
    boolean alone = sayings.size() == 1 && sayings.get(0).code().equals("shares-one-body");
    return alone ? List.of() : sayings;
  }

  /** Every figure by its path. */
  Map<String, Figure> figures() {
    Map<String, Figure> all = new LinkedHashMap<>();
    for (int i = 0; i < entries.size(); i++) {
      all.put("shares[" + i + "].compliance", entries.get(i).compliance());
      all.put("shares[" + i + "].share", entries.get(i).share());
    }
    return all;
  }
}
