package rundlauf.cutting.surface;

import rundlauf.bench.CutterMass;
import rundlauf.cutting.Tool;

/** Force of a mass that turns off its axis. */
public final class Unbalance {
  private Unbalance() {}

  /**
   * Force that turns with the spindle, {@code m e ω²}.
   *
   * @param mass that is off the axis [kg], 0 or more
   * @param eccentricity of its centre [m], 0 or more
   * @param speed turns per second, 0 or more
   * @return [N]; exact for the model. A grade of ISO 21940-11 needs the mass of the whole rotor
   */
  public static double force(double mass, double eccentricity, double speed) {
    double omega = 2 * Math.PI * speed;
    return mass * eccentricity * omega * omega;
  }

  /**
   * Mass of the cutter in front of the nut: flutes as a bar of 0.8 D, shank above.
   *
   * @param density [kg/m3], over 0
   * @return [kg], of the model; what the collet holds is not in it
   */
  public static double mass(Tool tool, double density) {
    return CutterMass.inFront(
        tool.diameter(), tool.fluteLength(), tool.shank(), tool.stickout(), density);
  }
}
