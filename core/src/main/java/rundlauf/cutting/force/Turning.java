package rundlauf.cutting.force;

import rundlauf.cutting.Conditions;
import rundlauf.cutting.Tool;
import rundlauf.cutting.ToolRunout;
import rundlauf.cutting.chip.EdgeRadii;
import rundlauf.cutting.chip.Slices;

/**
 * Where each slice of each tooth stands as the cutter turns.
 *
 * @param slices of the depth of cut
 * @param radii of the edges
 * @param pitch angle from tooth to tooth [rad]
 * @param lag how far an edge falls behind by height [rad/m]; 0 where the whole edge turns by less
 *     than a step of the angles and is taken as straight
 * @param width window of a tooth's angles that one slice spans at a time [rad]
 */
record Turning(Slices slices, EdgeRadii radii, double pitch, double lag, double width) {
  private static final int FEWEST_ANGLES = 8;

  static Turning of(Tool tool, Conditions cut, ToolRunout runout, Slices slices, int angles) {
    if (angles < FEWEST_ANGLES) {
      throw new IllegalArgumentException(
          "angles " + angles + " is below " + FEWEST_ANGLES + " (count)");
    }
    if (cut.radial() > tool.diameter()) {
      throw new IllegalArgumentException(
          "radial " + cut.radial() + " is above the diameter " + tool.diameter() + " (m)");
    }
    double step = 2 * Math.PI / angles;
    boolean straight = Math.abs(tool.lag()) * cut.axial() < step;
    return new Turning(
        slices,
        EdgeRadii.of(tool, runout),
        2 * Math.PI / tool.teeth(),
        straight ? 0 : tool.lag(),
        straight ? step : Math.abs(tool.lag()) * slices.thickness());
  }

  /** How far the middle of a slice of a tooth stands behind tooth 1 at the tip [rad]. */
  double behind(int tooth, int slice) {
    return tooth * pitch + lag * slices.middle(slice);
  }
}
