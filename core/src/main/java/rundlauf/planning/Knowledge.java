package rundlauf.planning;

import java.util.List;
import java.util.function.Function;
import rundlauf.bench.Cutter;
import rundlauf.bench.Setup;
import rundlauf.character.SetupCharacter;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Saying;
import rundlauf.safety.Standing;

/**
 * What is known of a bench's setups, all by the same draws.
 *
 * @param character of a setup with a cutter put in
 * @param standing of a setup's spindle
 * @param hold why a setup's spindle is held; empty when it is not
 */
public record Knowledge(
    Function<Put, SetupCharacter> character,
    Function<Setup, Standing> standing,
    Function<Setup, List<Saying>> hold) {
  /**
   * A cutter put into a setup.
   *
   * @param cutter perhaps another than the setup's own
   * @param stickout from the nut's face to its tip
   */
  public record Put(Setup setup, Cutter cutter, Quantity stickout) {}
}
