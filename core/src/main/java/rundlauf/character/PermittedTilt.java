package rundlauf.character;

import java.util.Optional;

/**
 * How far a shank may lean that nobody has read at two stations.
 *
 * <p>As if the whole runout that ISO 15488 Table 4 permits a class 2 collet at the table's distance
 * from its face (as quoted on a collet maker's technical page) came of the tilt alone: half of it
 * over the distance is the mean size, taken as that of a Rayleigh distribution, so that every
 * direction is as likely. A chuck or a sleeve may lean farther.
 */
final class PermittedTilt {
  /** Diameter up to which the row holds, distance, and runout permitted (total) [m]. */
  private static final double[][] TABLE = {
    {1.6e-3, 6e-3, 15e-6},
    {3e-3, 10e-3, 15e-6},
    {6e-3, 16e-3, 15e-6},
    {10e-3, 25e-3, 15e-6},
    {18e-3, 40e-3, 20e-6},
    {26e-3, 50e-3, 20e-6}
  };

  /** Shanks are this near to their nominal size; our choice, wider than h6. */
  private static final double SAME_DIAMETER = 0.02e-3;

  private PermittedTilt() {}

  /**
   * Sd of one component of the tilt.
   *
   * @param shank its diameter [m]; where it is not known, the row that leans most
   * @return [m/m]
   */
  static double component(Optional<Double> shank) {
    double diameter = shank.orElse(0.0);
    double[] row = TABLE[TABLE.length - 1];
    for (int i = TABLE.length - 1; i >= 0; i--) {
      if (diameter <= TABLE[i][0] + SAME_DIAMETER) {
        row = TABLE[i];
      }
    }
    return row[2] / 2 / row[1] / Math.sqrt(Math.PI / 2);
  }
}
