package rundlauf.cutting.force;

import rundlauf.cutting.Coefficients;
import rundlauf.cutting.Conditions;
import rundlauf.cutting.Tool;
import rundlauf.cutting.ToolRunout;

/**
 * Forces of a cutter on a nose that gives way: chip, force and deflection as they settle together.
 */
public final class SoftForces {
  /** Angles enough for peaks within 0.5 % (docs/methods/soft-nose.md): our choice. */
  public static final int ANGLES = 360;

  /** How near to rest, by feed per tooth: our choice, forces to 1e-4. */
  private static final double NEAR = 1e-4;

  private SoftForces() {}

  /**
   * The periodic static solution over one revolution: at every angle the tip stands where
   * compliance times force puts it, and each tooth meets the surface that the teeth before it left
   * with the deflection of then. No inertia: speeds whose tooth passing comes near a mode are
   * beyond it.
   *
   * @param tool SI
   * @param cut SI; radial at most the diameter
   * @param runout SI
   * @param coefficients SI
   * @param complianceX of tip in x, cutter and setup together [m/N], 0 or more
   * @param complianceY in y
   * @param angles n, 8 or more; taken up to the next multiple of the number of teeth
   * @return forces [N], torque [N m] and the place of the tip [m] at even angles, chips as they
   *     come out; or that no rest was found. Exact for the model but for slices and steps
   *     (docs/methods/soft-nose.md); no uncertainty of its own
   * @throws IllegalArgumentException when {@code angles} is below 8, a compliance below 0 or the
   *     radial depth above the diameter
   * @see "docs/methods/soft-nose.md"
   *     <!-- derivation -->
   */
  public static SoftTurn over(
      Tool tool,
      Conditions cut,
      ToolRunout runout,
      Coefficients coefficients,
      double complianceX,
      double complianceY,
      int angles) {
    if (!(complianceX >= 0) || !(complianceY >= 0)) {
      throw new IllegalArgumentException(
          "compliance " + complianceX + ", " + complianceY + " is not 0 or above (m/N)");
    }
    int teeth = tool.teeth();
    int even = teeth * ((angles + teeth - 1) / teeth);
    SoftCut soft = SoftCut.of(tool, cut, runout, coefficients, even);
    return over(soft, AxialForce.of(tool, coefficients), complianceX, complianceY);
  }

  static SoftTurn over(SoftCut cut, AxialForce axial, double complianceX, double complianceY) {
    double near = NEAR * cut.feed;
    NoseRest rest = new NoseRest(cut, complianceX, complianceY, near);
    SoftSum sum = new SoftSum(cut);
    int unsettled = 0;
    double worst = 0;
    for (int i = 0; i < cut.contacts.angles() / cut.teeth; i++) {
      double left = rest.settle(i);
      unsettled += left > near ? cut.teeth : 0;
      worst = Math.max(worst, left);
      sum.add(i, rest.stands());
    }
    return unsettled == 0
        ? new SoftTurn.Settled(sum.turn(axial))
        : new SoftTurn.Unsettled(unsettled, worst);
  }
}
