package rundlauf.reduce.sideload;

import rundlauf.quantity.Cause;
import rundlauf.quantity.Measured;
import rundlauf.quantity.Quantity;

/** The point about which a spindle's nose is taken to tip where one load distance tells none. */
public final class Pivot {
  /**
   * It lies within this share of the way from the nut to the middle of the clamp, either way; our
   * choice, as one load distance tells nothing of it.
   */
  private static final double DOUBT = 0.5;

  private Pivot() {}

  /**
   * How far the pivot lies behind the nut's face.
   *
   * @param spindle whose it is: trials of one spindle share its doubt
   * @param toMount from the nut's face to the middle of the clamp [m], over 0
   * @return the same distance [m], rectangular within half of it either way
   */
  public static Measured of(String spindle, Quantity toMount) {
    String record = "spindle/" + spindle;
    return toMount
        .measured(Cause.rectangular(record, "to-mount"))
        .with(Cause.rectangular(record, "pivot"), DOUBT * toMount.si() / Math.sqrt(3));
  }
}
