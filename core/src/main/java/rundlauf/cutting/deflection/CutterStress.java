package rundlauf.cutting.deflection;

import rundlauf.cutting.Conditions;
import rundlauf.cutting.Tool;
import rundlauf.cutting.force.ForceTurn;

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
    return of(PairedLoads.of(turn, tool, conditions), tool);
  }

  static CutterStress of(PairedLoads loads, Tool tool) {
    CutterBeam beam = CutterBeam.of(tool);
    double fluteRoot = 0;
    double nut = 0;
    for (int i = 0; i < loads.lowX().size(); i++) {
      fluteRoot = Math.max(fluteRoot, moment(loads, i, tool.fluteLength()));
      nut = Math.max(nut, moment(loads, i, tool.stickout()));
    }
    return new CutterStress(beam.stressAtFluteRoot(fluteRoot), beam.stressAtNut(nut));
  }

  /** Bending moment at a height above the cut [N m]. */
  private static double moment(PairedLoads loads, int i, double height) {
    double low = height - loads.low();
    double high = height - loads.high();
    return Math.hypot(
        loads.lowX().get(i) * low + loads.highX().get(i) * high,
        loads.lowY().get(i) * low + loads.highY().get(i) * high);
  }

  /** The larger of both: what the strength is held against [Pa]. */
  public double peak() {
    return Math.max(fluteRoot, nut);
  }
}
