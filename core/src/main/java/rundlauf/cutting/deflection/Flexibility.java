package rundlauf.cutting.deflection;

import rundlauf.cutting.Stiffness;
import rundlauf.cutting.Tool;

/**
 * How the cutting edges give way: the cutter bends, and the setup behind it shifts, the same at
 * every height of the edges.
 *
 * @param cutter as a stepped bar
 * @param setupX compliance of the setup along the feed, without the cutter's own bending [m/N], 0
 *     or more
 * @param setupY across it
 */
public record Flexibility(CutterBeam cutter, double setupX, double setupY) {
  /** What rounding may take from a difference of compliances, over the cutter's; our choice. */
  private static final double ROUNDING = 1e-9;

  public Flexibility {
    if (!(setupX >= 0 && setupY >= 0)) {
      throw new IllegalArgumentException(
          "compliance of the setup " + setupX + ", " + setupY + " m/N is below 0");
    }
  }

  /** A cutter held in a setup. */
  public static Flexibility of(Tool tool, Stiffness setup) {
    return new Flexibility(CutterBeam.of(tool), 1 / setup.x(), 1 / setup.y());
  }

  /**
   * The same from compliances at the tip that hold the cutter's own bending already.
   *
   * @param tipX along the feed [m/N], at least the cutter's own
   * @param tipY across it
   * @throws IllegalArgumentException for less than the cutter's own
   */
  public static Flexibility ofTip(Tool tool, double tipX, double tipY) {
    CutterBeam cutter = CutterBeam.of(tool);
    double own = cutter.tipCompliance();
    return new Flexibility(cutter, beyond(own, tipX), beyond(own, tipY));
  }

  private static double beyond(double own, double tip) {
    double setup = tip - own;
    return Math.abs(setup) <= ROUNDING * own ? 0 : setup;
  }

  /** Deflection of the tip for a force of 1 N at the tip along the feed [m/N]. */
  public double tipX() {
    return setupX + cutter.tipCompliance();
  }

  /** The same across the feed [m/N]. */
  public double tipY() {
    return setupY + cutter.tipCompliance();
  }

  /** Deflection across the feed at height {@code zAt} for a force at height {@code zLoad} [m/N]. */
  public double y(double zLoad, double zAt) {
    return setupY + cutter.compliance(zLoad, zAt);
  }
}
