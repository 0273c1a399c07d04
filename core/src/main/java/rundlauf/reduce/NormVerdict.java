package rundlauf.reduce;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Saying;

/**
 * Whether something conforms to a norm, as far as the readings tell.
 *
 * @param norm with its table, grade or clause
 * @param about what was judged: the name of a holder or a spindle
 * @param limit the most the norm allows; missing where it has none for this
 * @param figure what is held against it; missing where it cannot be had
 * @param probability that the value lies within the limit; empty where nothing is decided
 * @param outcome by that probability
 * @param said the verdict in words, and why nothing is decided and what would decide it
 */
public record NormVerdict(
    String norm,
    String about,
    Figure limit,
    Figure figure,
    OptionalDouble probability,
    Outcome outcome,
    List<Saying> said) {
  public NormVerdict {
    said = List.copyOf(said);
  }

  /** How it comes out. */
  public enum Outcome {
    /** Within the limit with the probability asked, or more. */
    PROVEN,
    /** Neither within nor outside with it. */
    NOT_PROVEN,
    /** Outside the limit with it, or more. */
    DISPROVEN,
    /** The readings are not those that the norm speaks of. */
    NOT_DECIDED;

    /** As written in documents: {@code proven}, {@code not-proven}, … */
    public String code() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }
}
