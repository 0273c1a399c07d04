package rundlauf.cutting.force;

import java.util.List;
import rundlauf.maths.Samples;

/**
 * Forces on the cutter over one revolution, at evenly spaced rotation angles φ of tooth 1 at the
 * tip, φ_i = 2π i / n.
 *
 * @param x along the feed [N], by angle
 * @param y across it, toward +y [N]
 * @param z Fa: positive when it pulls the cutter out of the collet and lifts the work [N]; empty
 *     when the axial force is not known
 * @param torque on the spindle [N m], positive against the rotation
 * @param teeth what each tooth takes
 * @param tipX where the tip stands in x at each angle, cutter and setup together [m]; zeros when
 *     rigid
 * @param tipY in y
 */
public record ForceTurn(
    Samples x,
    Samples y,
    Samples z,
    Samples torque,
    List<ToothLoad> teeth,
    Samples tipX,
    Samples tipY) {
  public ForceTurn {
    teeth = List.copyOf(teeth);
  }

  /** Size of the force across the axis at each angle, √(x² + y²) [N]. */
  public Samples lateral() {
    return Samples.generate(x.size(), i -> Math.hypot(x.get(i), y.get(i)));
  }

  /**
   * Mean power of the cut.
   *
   * @param speed n [turns/s], over 0
   * @return {@code 2π n} times the mean torque [W]
   */
  public double power(double speed) {
    return 2 * Math.PI * speed * torque.mean();
  }

  /**
   * What one tooth takes.
   *
   * @param tooth from 1
   * @param peak thickest chip anywhere on it [m]; 0 when it never cuts
   * @param share of the removed material, 0 to 1; the shares sum to 1
   */
  public record ToothLoad(int tooth, double peak, double share) {}
}
