package rundlauf.planning;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How a setup stands to the other ones that will do a job.
 *
 * @param place 1 and one more for each setup that is told to be quicker
 * @param alike setups whose times are too close to be told apart from its own; two of them may well
 *     be told apart from each other
 */
public record Rank(int place, List<String> alike) {
  /**
   * Times are told apart from this ratio on; our choice: six speeds over a range of one to three go
   * in steps of a quarter.
   */
  static final double TOLD = 1.25;

  /**
   * Odds of two misses, in 100, that are told apart: two standard errors of the difference of two
   * shares of {@link Planning#STATES} draws, at most.
   */
  public static final int ODDS_TOLD = (int) (200 * Math.sqrt(0.5 / Planning.STATES));

  public Rank {
    alike = List.copyOf(alike);
  }

  /** Empty where the setup is not recommended. */
  static Optional<Rank> of(SetupPlan one, List<SetupPlan> all) {
    if (!one.recommended()) {
      return Optional.empty();
    }
    Map<String, Double> seconds = new LinkedHashMap<>();
    all.stream()
        .filter(SetupPlan::recommended)
        .forEach(able -> seconds.put(able.setup(), able.secondsPerMetre()));
    return Optional.of(of(one.setup(), seconds));
  }

  /** By the times of all that will do, its own among them. */
  static Rank of(String setup, Map<String, Double> seconds) {
    double own = seconds.getOrDefault(setup, Double.NaN);
    long quicker = seconds.values().stream().filter(other -> TOLD * other <= own).count();
    List<String> alike =
        seconds.entrySet().stream()
            .filter(other -> !other.getKey().equals(setup))
            .filter(other -> TOLD * other.getValue() > own && TOLD * own > other.getValue())
            .map(Map.Entry::getKey)
            .toList();
    return new Rank((int) quicker + 1, alike);
  }
}
