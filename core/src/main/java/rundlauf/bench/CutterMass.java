package rundlauf.bench;

/** What a cutter weighs in front of the nut. */
public final class CutterMass {
  /** Density of cemented carbide with about 10 % cobalt [kg/m3]; from memory. */
  public static final double CARBIDE = 14_500;

  /** Density of tool steel [kg/m3]; from memory. */
  public static final double STEEL = 7_850;

  /** From this modulus a cutter is taken as cemented carbide [Pa]; our choice. */
  private static final double CARBIDE_FROM = 400e9;

  private CutterMass() {}

  /** Density [kg/m3] of what has this Young's modulus [Pa]. */
  public static double density(double modulus) {
    return modulus >= CARBIDE_FROM ? CARBIDE : STEEL;
  }

  /**
   * Mass in front of the nut: flutes as a bar of 0.8 D, shank above.
   *
   * @param diameter over the edges [m]
   * @param fluteLength [m]
   * @param shank diameter [m]
   * @param stickout from the nut's face to the tip [m]; shorter than the flutes, what stands out
   *     counts
   * @param density [kg/m3], over 0
   * @return [kg], of the model; what the collet holds is not in it
   */
  public static double inFront(
      double diameter, double fluteLength, double shank, double stickout, double density) {
    double core = 0.8 * diameter;
    double cutting = Math.min(fluteLength, stickout);
    double flutes = core * core * cutting;
    double above = shank * shank * (stickout - cutting);
    return density * Math.PI / 4 * (flutes + above);
  }
}
