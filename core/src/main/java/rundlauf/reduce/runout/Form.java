package rundlauf.reduce.runout;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;

/**
 * What a sweep shows besides an offset circle [m].
 *
 * @param lsc roundness deviation about the centre of the least-squares circle
 * @param mzc the least there is about any centre
 * @param mcc about the centre of the minimum circumscribed circle
 * @param mic about the centre of the maximum inscribed circle
 * @param synchronous range of the mean over turns, the once-a-turn part taken out
 * @param asynchronous largest range over turns at one angle
 * @param circles the profile with its circles, for drawing them; empty where the readings bear none
 */
public record Form(
    Figure lsc,
    Figure mzc,
    Figure mcc,
    Figure mic,
    Figure synchronous,
    Figure asynchronous,
    Optional<FormCircles> circles) {

  /** Nothing of it can be had. */
  public static Form missing(Saying why) {
    Figure none = new Missing(Unit.MICROMETRE, why);
    return new Form(none, none, none, none, none, none, Optional.empty());
  }

  Form withTurns(Figure together, Figure apart) {
    return new Form(lsc, mzc, mcc, mic, together, apart, circles);
  }

  /** By the name of the reference circle. */
  public Map<String, Figure> roundness() {
    Map<String, Figure> circles = new LinkedHashMap<>();
    circles.put("lsc", lsc);
    circles.put("mzc", mzc);
    circles.put("mcc", mcc);
    circles.put("mic", mic);
    return circles;
  }
}
