package rundlauf.compare;

import java.util.List;

/**
 * A figure that is set side by side.
 *
 * @param kind of trial
 * @param path of the figure in its result
 * @param good which of two is the better one
 */
record Compared(String kind, String path, Good good) {
  /** Which way is better. */
  enum Good {
    SMALLER,
    LARGER,
    NEITHER
  }

  static final String STATION_TIR = "stations.tir";

  /** What stands side by side, in its order. */
  static final List<Compared> ALL =
      List.of(
          new Compared("runout", "nextClamping.tir", Good.SMALLER),
          new Compared("runout", "axis.tip.tir", Good.SMALLER),
          new Compared("runout", "axis.tip.eccentricity", Good.SMALLER),
          new Compared("runout", "axis.tilt", Good.SMALLER),
          new Compared("runout", "clampingScatter", Good.SMALLER),
          new Compared("runout", STATION_TIR, Good.SMALLER),
          new Compared("side-load", "stiffness", Good.LARGER),
          new Compared("side-load", "setupStiffness", Good.LARGER),
          new Compared("side-load", "compliance", Good.SMALLER),
          new Compared("side-load", "play", Good.SMALLER),
          new Compared("side-load", "hysteresis", Good.SMALLER),
          new Compared("speed", "usable.min", Good.NEITHER),
          new Compared("speed", "usable.max", Good.NEITHER),
          new Compared("speed", "droop", Good.SMALLER));
}
