package rundlauf.guide;

import java.util.List;
import java.util.Optional;
import rundlauf.quantity.Saying;

/**
 * What a sheet says at this point of its trial.
 *
 * @param ahead what comes next, and what after it, so that a device goes on while the bench is not
 *     reached; none when all that was intended is done
 * @param more a reading beyond what was intended
 * @param done how many steps are done
 * @param intended how many there are
 * @param enough that further readings would hardly better the figure, where that is so
 * @param ask conditions that are still unsaid; each saying is about the field
 */
public record Guidance(
    List<Step> ahead,
    Step more,
    int done,
    int intended,
    Optional<Saying> enough,
    List<Saying> ask) {
  public Guidance {
    ahead = List.copyOf(ahead);
    ask = List.copyOf(ask);
  }

  /** What comes next; empty when all that was intended is done. */
  public Optional<Step> step() {
    return ahead.stream().findFirst();
  }
}
