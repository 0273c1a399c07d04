package rundlauf.cutting.chip;

import rundlauf.cutting.Tool;
import rundlauf.cutting.ToolRunout;

/** How far each edge stands from the spindle's axis, by its height above the tip. */
public final class EdgeRadii {
  private final int teeth;
  private final double pitch;
  private final double lag;
  private final double radius;
  private final ToolRunout runout;

  private EdgeRadii(Tool tool, ToolRunout runout) {
    this.teeth = tool.teeth();
    this.pitch = 2 * Math.PI / tool.teeth();
    this.lag = tool.lag();
    this.radius = tool.diameter() / 2;
    this.runout = runout;
  }

  public static EdgeRadii of(Tool tool, ToolRunout runout) {
    return new EdgeRadii(tool, runout);
  }

  /**
   * Radius of one edge at one height.
   *
   * @param tooth from 0; tooth {@code k + 1} follows tooth {@code k}
   * @param z height above the tip [m]
   * @return {@code R_k(z) = D/2 + e cos(first − 2πk/N − 2 z tan(helix)/D)} and the same of the
   *     tilt, with its own angle and times z [m]; exact
   */
  public double at(int tooth, double z) {
    double behind = tooth * pitch + lag * z;
    return radius
        + runout.eccentricity() * Math.cos(runout.firstTooth() - behind)
        + runout.tilt() * z * Math.cos(runout.tiltAngle() - behind);
  }

  /**
   * How much farther out each tooth stands than those that went before it, at one height.
   *
   * @param z height above the tip [m]
   * @return N rows of N: row k, place m − 1 is {@code R_k − R_(k−m)} [m], m from 1 to N
   */
  public double[][] lookBack(double z) {
    double[] at = new double[teeth];
    for (int k = 0; k < teeth; k++) {
      at[k] = at(k, z);
    }
    double[][] ahead = new double[teeth][teeth];
    for (int k = 0; k < teeth; k++) {
      for (int m = 1; m <= teeth; m++) {
        ahead[k][m - 1] = at[k] - at[Math.floorMod(k - m, teeth)];
      }
    }
    return ahead;
  }

  /** How much the farthest and the nearest edge can differ over {@code height} [m], at most [m]. */
  public double spread(double height) {
    return 2 * (runout.eccentricity() + runout.tilt() * height);
  }
}
