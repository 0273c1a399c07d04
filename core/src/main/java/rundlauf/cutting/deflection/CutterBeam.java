package rundlauf.cutting.deflection;

import rundlauf.cutting.Tool;

/**
 * The cutter as a stepped round bar, built in where it leaves the nut: flutes below, shank above.
 *
 * @param fluteDiameter of the bar that stands for the flutes [m], over 0
 * @param fluteLength from the tip to the step [m], 0 to {@code stickout}
 * @param stickout from the tip to the nut's face [m], over 0
 * @param shank diameter above the step [m], over 0
 * @param modulus Young's modulus [Pa], over 0; infinite for a rigid cutter
 */
public record CutterBeam(
    double fluteDiameter, double fluteLength, double stickout, double shank, double modulus) {
  /** Bar that bends as the flutes do, over D: Kops and Vo, CIRP Annals 39/1 (1990) 93-96. */
  public static final double FLUTE_CORE = 0.8;

  public CutterBeam {
    require(fluteDiameter > 0, "fluteDiameter", fluteDiameter);
    require(shank > 0, "shank", shank);
    require(modulus > 0, "modulus", modulus);
    require(stickout > 0, "stickout", stickout);
    require(fluteLength >= 0 && fluteLength <= stickout, "fluteLength", fluteLength);
  }

  /** The bar of a cutter: flutes as a round bar of 0.8 D. */
  public static CutterBeam of(Tool tool) {
    return new CutterBeam(
        FLUTE_CORE * tool.diameter(),
        tool.fluteLength(),
        tool.stickout(),
        tool.shank(),
        tool.modulus());
  }

  /** Deflection of the tip for a force of 1 N across it [m/N]; exact for the model. */
  public double tipCompliance() {
    return compliance(0, 0);
  }

  /**
   * Deflection at one height for a force across the cutter at another.
   *
   * <p>Unit load: {@code ∫ (s − a)(s − b) / (E I) ds} from the higher of both to the nut, by steps
   * of I = π d⁴/64; no shear, the grip rigid.
   *
   * @param zLoad height of the force above the tip [m], 0 to {@code stickout}
   * @param zAt height looked at [m], 0 to {@code stickout}
   * @return compliance [m/N], not negative; exact for the model; the same with both heights changed
   *     for each other
   * @throws IllegalArgumentException for a height off the cutter
   * @see "docs/methods/deflection.md"
   */
  public double compliance(double zLoad, double zAt) {
    require(zLoad >= 0 && zLoad <= stickout, "zLoad", zLoad);
    require(zAt >= 0 && zAt <= stickout, "zAt", zAt);
    double from = Math.max(zLoad, zAt);
    double apart = Math.abs(zLoad - zAt);
    double toStep = Math.max(0, fluteLength - from);
    double flutes = area(toStep, apart) / inertia(fluteDiameter);
    double above = (area(stickout - from, apart) - area(toStep, apart)) / inertia(shank);
    return (flutes + above) / modulus;
  }

  /** {@code ∫ t (t + apart) dt} from 0 to {@code length}. */
  private static double area(double length, double apart) {
    return length * length * (length / 3 + apart / 2);
  }

  private static double inertia(double diameter) {
    double square = diameter * diameter;
    return Math.PI * square * square / 64;
  }

  /**
   * Bending stress at the root of the flutes, {@code 32 M / (π d³)}.
   *
   * @param moment M there [N m], 0 or more: of a force across the tip, force times flute length
   * @return stress [Pa], nominal: without the notch at the run-out of the flutes; exact for the
   *     model
   * @see "docs/methods/deflection.md"
   */
  public double stressAtFluteRoot(double moment) {
    return stress(moment, fluteDiameter);
  }

  /** The same where the cutter leaves the nut: of a force across the tip, force times stickout. */
  public double stressAtNut(double moment) {
    return stress(moment, fluteLength < stickout ? shank : fluteDiameter);
  }

  private static double stress(double moment, double diameter) {
    return 32 * moment / (Math.PI * diameter * diameter * diameter);
  }

  private static void require(boolean holds, String name, double value) {
    if (!holds) {
      throw new IllegalArgumentException(name + " " + value + " m or Pa cannot be");
    }
  }
}
