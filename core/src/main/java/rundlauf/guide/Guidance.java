package rundlauf.guide;

import java.util.List;
import java.util.Optional;
import rundlauf.quantity.Saying;

/**
 * What a sheet says at this point of its trial.
 *
 * @param step what comes next; empty when all that was intended is done
 * @param more a reading beyond what was intended
 * @param done how many steps are done
 * @param intended how many there are
 * @param enough that further readings would hardly better the figure, where that is so
 * @param ask conditions that are still unsaid; each saying is about the field
 */
public record Guidance(
    Optional<Step> step,
    Step more,
    int done,
    int intended,
    Optional<Saying> enough,
    List<Saying> ask) {
  public Guidance {
    ask = List.copyOf(ask);
  }
}
