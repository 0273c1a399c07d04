package rundlauf.cutting;

/** Force coefficients of a material, SI. */
public sealed interface Coefficients {
  /** Whether the axial force can be had; if not, z forces are null with why. */
  boolean axialKnown();

  /**
   * Linear edge-force model (Budak, Altintas, Armarego 1996): {@code dF = (K_c h + K_e) dz} for
   * tangential, radial, axial.
   *
   * @param ktc cutting coefficients [Pa]
   * @param kte edge coefficients [N/m]
   * @param axialKnown whether {@code kac} and {@code kae} are known; they are 0 if not
   */
  record LinearEdge(
      double ktc, double krc, double kac, double kte, double kre, double kae, boolean axialKnown)
      implements Coefficients {
    /** All six known. */
    public LinearEdge(double ktc, double krc, double kac, double kte, double kre, double kae) {
      this(ktc, krc, kac, kte, kre, kae, true);
    }

    /** The axial pair not known. */
    public static LinearEdge inPlane(double ktc, double krc, double kte, double kre) {
      return new LinearEdge(ktc, krc, 0, kte, kre, 0, false);
    }
  }

  /**
   * Kienzle: {@code kc = kc11 h^−mc} with h in millimetres; the edge is in kc.
   *
   * @param kc11 at h = 1 mm [Pa]
   * @param mc exponent, 0 to 1
   * @param radialRatio Fr / Ft
   * @param axialRatio Fa / Ft; NaN is never held: {@code axialKnown} tells
   * @param axialKnown whether the axial ratio is known; if not, z forces are null with why
   */
  record Kienzle(double kc11, double mc, double radialRatio, double axialRatio, boolean axialKnown)
      implements Coefficients {}
}
