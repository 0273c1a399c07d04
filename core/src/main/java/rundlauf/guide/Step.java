package rundlauf.guide;

import java.util.List;
import rundlauf.quantity.Saying;

/**
 * What to do next, and which cells its row will hold.
 *
 * @param prompt what to do, in large letters
 * @param given cells that are known beforehand
 * @param asked cells that are typed, at least one
 * @param scene what the drawing beside it shows
 */
public record Step(Saying prompt, List<Given> given, List<Asked> asked, Scene scene) {
  public Step {
    given = List.copyOf(given);
    asked = List.copyOf(asked);
  }
}
