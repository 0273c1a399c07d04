package rundlauf.cutting.prediction;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Saying;

/**
 * A limit and how the cut stands to it.
 *
 * @param code such as {@code wall-error}; its words are {@code term.limit-CODE}
 * @param value what the cut does
 * @param allowed what it may do; missing, with why, when the limit cannot be judged
 * @param margin what is left: positive where the value keeps the limit
 * @param probability that the limit holds, 0 to 1; empty when it cannot be judged
 * @param assumedOfValue traits that were assumed and count in the value
 * @param assumedOfAllowed traits that were assumed and count in what is allowed
 */
public record Limit(
    String code,
    Figure value,
    Figure allowed,
    Figure margin,
    OptionalDouble probability,
    List<Saying> assumedOfValue,
    List<Saying> assumedOfAllowed) {
  /** The probability that is asked of every limit, and of all together. */
  public static final double ASKED = 0.95;

  /** Limits that hold from below. */
  static final List<String> AT_LEAST = List.of("speed-low", "chip-thinnest");

  public Limit {
    assumedOfValue = List.copyOf(assumedOfValue);
    assumedOfAllowed = List.copyOf(assumedOfAllowed);
  }

  /** Whether the value must be at least what is allowed, and not at most. */
  public boolean atLeast() {
    return AT_LEAST.contains(code);
  }

  /** Every trait that was assumed and counts here. */
  public List<Saying> assumed() {
    return Stream.concat(assumedOfValue.stream(), assumedOfAllowed.stream()).distinct().toList();
  }

  public boolean judged() {
    return probability.isPresent();
  }

  /** Whether it holds with the probability asked; a limit that cannot be judged does not. */
  public boolean holds() {
    return probability.orElse(0) >= ASKED;
  }

  /** Why it cannot be judged. */
  public Saying why() {
    Figure unknown = allowed instanceof Missing ? allowed : value;
    return ((Missing) unknown).why();
  }
}
