package rundlauf.cutting.prediction;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * How a cut fared against its limits over the shared draws.
 *
 * @param probability that every judged limit holds; where the looking was stopped because it can no
 *     longer reach what is asked, the most that it could have been
 * @param states how many draws were looked at
 * @param failures by code, on how many of them a limit was the first to fail
 */
public record Tried(double probability, int states, Map<String, Integer> failures) {
  public Tried {
    failures = Collections.unmodifiableMap(new LinkedHashMap<>(failures));
  }

  /** Whether the probability asked is reached. */
  public boolean passes() {
    return probability >= Limit.ASKED;
  }
}
