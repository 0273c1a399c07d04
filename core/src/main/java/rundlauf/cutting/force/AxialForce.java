package rundlauf.cutting.force;

import rundlauf.cutting.Coefficients;
import rundlauf.cutting.Tool;

/** Which way the axial force goes, and whether it can be had. */
final class AxialForce {
  private AxialForce() {}

  static boolean known(Coefficients coefficients) {
    return !(coefficients instanceof Coefficients.Kienzle kienzle) || kienzle.axialKnown();
  }

  /** 1 for a right-hand helix, which pulls the cutter out of the collet; −1 for a left-hand one. */
  static int sign(Tool tool) {
    return tool.helix() < 0 ? -1 : 1;
  }
}
