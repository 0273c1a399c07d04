package rundlauf.cutting.force;

import rundlauf.quantity.Arg;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;

/** Forces over a turn on a nose that gives way, or that no rest was found. */
public sealed interface SoftTurn {
  /** The nose is at rest at every angle; the turn says where. */
  record Settled(ForceTurn turn) implements SoftTurn {}

  /**
   * At some angles no place was found where the force of the cut and the stiffness balance.
   *
   * @param angles at how many angles
   * @param left how far from balance, at worst [m]
   */
  record Unsettled(int angles, double left) implements SoftTurn {
    /** What is to be said of it. */
    public Saying why() {
      return Saying.of(
          "nose-unsettled", "deflection", Arg.of(angles), Arg.of(left, Unit.MICROMETRE));
    }
  }
}
