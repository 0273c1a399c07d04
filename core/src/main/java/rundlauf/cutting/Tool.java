package rundlauf.cutting;

/**
 * A cutter as numbers, SI.
 *
 * @param diameter D over the edges [m], over 0
 * @param teeth N, 1 or more
 * @param helix helix angle [rad], negative for a left-hand helix
 * @param fluteLength [m]
 * @param stickout from the nut's face to the tip [m], at least the flute length
 * @param shank diameter of the shank [m]
 * @param modulus Young's modulus [Pa]
 */
public record Tool(
    double diameter,
    int teeth,
    double helix,
    double fluteLength,
    double stickout,
    double shank,
    double modulus) {
  public Tool {
    Range.positive("diameter", diameter, "m");
    Range.positive("teeth", teeth, "count");
    Range.within("helix", helix, Math.PI / 2, "rad");
  }

  /** How far the edge falls behind for each metre of height: 2 tan(helix) / D [rad/m]. */
  public double lag() {
    return 2 * Math.tan(helix) / diameter;
  }
}
