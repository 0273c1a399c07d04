package rundlauf.cutting.deflection;

import rundlauf.cutting.Conditions;
import rundlauf.cutting.Tool;
import rundlauf.cutting.force.ForceTurn;
import rundlauf.maths.Samples;

/**
 * Largest bending stress in the cutter over a revolution.
 *
 * @param fluteRoot where the flutes end [Pa]
 * @param nut where the cutter leaves the nut [Pa]
 */
public record CutterStress(double fluteRoot, double nut) {
  /**
   * Largest stresses of a turn.
   *
   * @param turn forces on the cutter over a revolution [N]
   * @param tool the cutter
   * @param conditions how it is cut
   * @return nominal stresses of a stepped bar, bending alone: no notch, no torsion; exact for the
   *     model
   * @see "docs/methods/deflection.md"
   */
  public static CutterStress of(ForceTurn turn, Tool tool, Conditions conditions) {
    CutterBeam beam = CutterBeam.of(tool);
    Samples heights = LoadHeights.of(turn, tool, conditions);
    double fluteRoot = 0;
    double nut = 0;
    for (int i = 0; i < heights.size(); i++) {
      double force = Math.hypot(turn.x().get(i), turn.y().get(i));
      fluteRoot = Math.max(fluteRoot, beam.stressAtFluteRoot(force, heights.get(i)));
      nut = Math.max(nut, beam.stressAtNut(force, heights.get(i)));
    }
    return new CutterStress(fluteRoot, nut);
  }

  /** The larger of both: what the strength is held against [Pa]. */
  public double peak() {
    return Math.max(fluteRoot, nut);
  }
}
