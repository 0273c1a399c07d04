package rundlauf.cutting.force;

import rundlauf.cutting.Conditions;
import rundlauf.cutting.Tool;
import rundlauf.cutting.chip.EdgeRadii;

/**
 * Chips at the two ends of the edge, the tip and the top of the cut, where with runout they are
 * often thickest; the pieces of {@link SoftCut} know only their middles.
 */
final class EndChips {
  private final int angles;
  private final int teeth;
  private final double feed;
  private final double entry;
  private final double exit;
  private final double pitch;
  private final double[] behind;
  private final double[][][] leads;

  EndChips(Tool tool, Conditions cut, Turning turning, int angles) {
    this.angles = angles;
    teeth = tool.teeth();
    feed = cut.feedPerTooth();
    entry = cut.entry(tool.diameter());
    exit = cut.exit(tool.diameter());
    pitch = turning.pitch();
    behind = new double[] {0, turning.lag() * cut.axial()};
    EdgeRadii radii = turning.radii();
    leads = new double[][][] {radii.lookBack(0), radii.lookBack(cut.axial())};
  }

  /**
   * Raises the peaks of the teeth to what their ends take.
   *
   * @param angle index of the angle
   * @param stands N pairs of x and y, one tooth apart [m]
   * @param q pair that stands now
   * @param peaks by tooth [m], raised
   */
  void raise(int angle, double[] stands, int q, double[] peaks) {
    for (int end = 0; end < behind.length; end++) {
      for (int tooth = 0; tooth < teeth; tooth++) {
        double phi = 2 * Math.PI * angle / angles - tooth * pitch - behind[end];
        phi -= 2 * Math.PI * Math.floor(phi / (2 * Math.PI));
        if (phi >= entry && phi <= exit) {
          peaks[tooth] = Math.max(peaks[tooth], chip(phi, leads[end][tooth], stands, q));
        }
      }
    }
  }

  private double chip(double phi, double[] lead, double[] stands, int q) {
    double s = Math.sin(phi);
    double c = Math.cos(phi);
    double chip = teeth * feed * s;
    for (int m = 1; m < teeth; m++) {
      int then = Math.floorMod(q - m, teeth);
      double outward =
          (stands[2 * q] - stands[2 * then]) * s + (stands[2 * q + 1] - stands[2 * then + 1]) * c;
      chip = Math.min(chip, m * feed * s + lead[m - 1] + outward);
    }
    return chip;
  }
}
