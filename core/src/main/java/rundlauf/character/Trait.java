package rundlauf.character;

import java.util.List;
import rundlauf.quantity.Figure;

/**
 * One trait of a setup: its value with doubt, and where it comes from.
 *
 * @param figure known, or {@code Missing} with why
 * @param origin where it comes from
 * @param sources the trials it was measured in, the table it was assumed from (a code with a
 *     sentence), or empty
 */
public record Trait(Figure figure, Origin origin, List<String> sources) {
  public Trait {
    sources = List.copyOf(sources);
  }

  /**
   * Where a trait comes from. An assumed one is printed as assumed beside every number it touches.
   */
  public enum Origin {
    MEASURED,
    ENTERED,
    TAUGHT,
    ASSUMED,
    MISSING
  }
}
