package rundlauf.simulated;

/**
 * The shank that bends: a round cantilever.
 *
 * @param diameter [m]
 * @param modulus [Pa]
 * @param contact where it is pushed, from the nut's face [m]
 * @param gripDepth how far inside the nut it is truly held [m]
 */
public record Shank(double diameter, double modulus, double contact, double gripDepth) {
  /** Poisson's ratio of cemented carbide, about that of steel less a quarter. */
  private static final double POISSON = 0.22;

  /** Held right at the nut's face. */
  public static Shank clean(double diameter, double modulus, double contact) {
    return new Shank(diameter, modulus, contact, 0);
  }

  public Shank gripped(double depth) {
    return new Shank(diameter, modulus, contact, depth);
  }

  /** Bending and shear under a load at the contact [m/N]: Timoshenko's cantilever. */
  public double compliance() {
    double length = contact + gripDepth;
    double inertia = Math.PI * Math.pow(diameter, 4) / 64;
    double area = Math.PI * diameter * diameter / 4;
    double shearModulus = modulus / (2 * (1 + POISSON));
    double shearFactor = 6 * (1 + POISSON) / (7 + 6 * POISSON);
    return Math.pow(length, 3) / (3 * modulus * inertia)
        + length / (shearFactor * shearModulus * area);
  }
}
