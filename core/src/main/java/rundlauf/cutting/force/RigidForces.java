package rundlauf.cutting.force;

import rundlauf.cutting.Coefficients;
import rundlauf.cutting.Conditions;
import rundlauf.cutting.Tool;
import rundlauf.cutting.ToolRunout;
import rundlauf.cutting.chip.ChipArc;
import rundlauf.cutting.chip.ChipArcs;
import rundlauf.cutting.chip.ChipLoads;
import rundlauf.cutting.chip.Slices;
import rundlauf.maths.Samples;

/** Forces of a cutter that does not give way. */
public final class RigidForces {
  /** Angles enough for peaks within 0.5 % (docs/methods/force.md): our choice. */
  public static final int ANGLES = 360;

  private RigidForces() {}

  /**
   * Forces over one revolution.
   *
   * <p>Along the edge the force is summed in closed form (linear edge-force) or by running
   * integrals (Kienzle), slice by slice; the edge force acts only where a tooth cuts. Where the
   * whole edge turns by less than one step of the angles, each value is the mean over that step, so
   * that the mean over the turn stays true with straight teeth.
   *
   * @param tool SI
   * @param cut SI; radial at most the diameter
   * @param runout SI
   * @param coefficients SI
   * @param angles n, 8 or more
   * @return forces [N] and torque [N m] at n even angles; exact for the model but for the slices
   *     and steps (docs/methods/force.md); no uncertainty of its own
   * @throws IllegalArgumentException when {@code angles} is below 8 or the radial depth above the
   *     diameter
   * @see "E. Budak, Y. Altintas, E.J.A. Armarego, J. Manuf. Sci. Eng. 118 (1996) 216-224"
   */
  public static ForceTurn over(
      Tool tool, Conditions cut, ToolRunout runout, Coefficients coefficients, int angles) {
    return over(tool, cut, runout, coefficients, Slices.of(tool, cut, runout), angles);
  }

  /** The same with slices of the caller's choice. */
  static ForceTurn over(
      Tool tool,
      Conditions cut,
      ToolRunout runout,
      Coefficients coefficients,
      Slices slices,
      int angles) {
    Turning turning = Turning.of(tool, cut, runout, slices, angles);
    TurnSum sum = new TurnSum(angles);
    for (int i = 0; i < turning.slices().count(); i++) {
      addSlice(sum, turning, i, tool, cut, coefficients);
    }
    Samples still = Samples.generate(angles, i -> 0);
    return new ForceTurn(
        sum.x(),
        sum.y(),
        sum.axial(AxialForce.of(tool, coefficients)),
        sum.torque(),
        ChipLoads.of(tool, cut, runout).teeth().stream().map(RigidForces::load).toList(),
        still,
        still);
  }

  private static void addSlice(
      TurnSum sum, Turning turning, int slice, Tool tool, Conditions cut, Coefficients k) {
    double z = turning.slices().middle(slice);
    double[][] leads = turning.radii().lookBack(z);
    double entry = cut.entry(tool.diameter());
    double exit = cut.exit(tool.diameter());
    for (int tooth = 0; tooth < tool.teeth(); tooth++) {
      for (ChipArc arc : ChipArcs.of(cut.feedPerTooth(), leads[tooth], entry, exit)) {
        sum.add(
            arcForce(k, arc),
            arc,
            turning.behind(tooth, slice),
            turning.width(),
            turning.slices().thickness(),
            turning.radii().at(tooth, z));
      }
    }
  }

  private static ArcForce arcForce(Coefficients coefficients, ChipArc arc) {
    if (coefficients instanceof Coefficients.Kienzle kienzle) {
      return new PowerArc(kienzle, arc);
    }
    return new LinearArc((Coefficients.LinearEdge) coefficients, arc);
  }

  private static ForceTurn.ToothLoad load(ChipLoads.Tooth tooth) {
    return new ForceTurn.ToothLoad(tooth.tooth(), tooth.peak(), tooth.share());
  }
}
