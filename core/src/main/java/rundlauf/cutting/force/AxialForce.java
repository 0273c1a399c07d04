package rundlauf.cutting.force;

import rundlauf.cutting.Coefficients;
import rundlauf.cutting.Tool;
import rundlauf.maths.Samples;

/** Which way the axial force goes, and whether it can be had. */
enum AxialForce {
  /** Of a right-hand helix: it pulls the cutter out of the collet. */
  OUT,
  /** Of a left-hand helix: it pushes the cutter in. */
  IN,
  UNKNOWN;

  static AxialForce of(Tool tool, Coefficients coefficients) {
    if (!coefficients.axialKnown()) {
      return UNKNOWN;
    }
    return tool.helix() < 0 ? IN : OUT;
  }

  /** By angle as it is given in {@link ForceTurn}. */
  Samples signed(double[] size) {
    return switch (this) {
      case OUT -> Samples.of(size);
      case IN -> Samples.of(size).map(force -> -force);
      case UNKNOWN -> Samples.of();
    };
  }
}
