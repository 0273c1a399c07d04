package rundlauf.cutting.prediction;

import java.util.OptionalDouble;

/**
 * What the job, the work's holding and the machine allow, SI; empty: nothing is asked.
 *
 * @param wallError largest size of the wall error [m]
 * @param cusp largest height of the feed marks [m]
 * @param inPlane force across the axis that the work's holding bears [N]
 * @param lift force upward that it bears [N]
 * @param axesFeed fastest feed of the axes [m/s]
 * @param holderSpeed fastest speed of the holder and its nut [turns/s]
 */
public record Allowed(
    OptionalDouble wallError,
    OptionalDouble cusp,
    OptionalDouble inPlane,
    OptionalDouble lift,
    OptionalDouble axesFeed,
    OptionalDouble holderSpeed) {
  private static final OptionalDouble NONE = OptionalDouble.empty();

  /** Nothing asked. */
  public static final Allowed ANYTHING = new Allowed(NONE, NONE, NONE, NONE, NONE, NONE);
}
