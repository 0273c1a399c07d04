package rundlauf.cutting.force;

import rundlauf.cutting.Coefficients;

/**
 * Both force models in one form, for a piece of edge that may cut along a part of it only: force by
 * length = cut · chip^power + edge · part that cuts.
 *
 * @param tCut tangential, of the chip [N / m^(1 + power)]
 * @param rCut radial
 * @param aCut axial
 * @param tEdge tangential, of the edge [N/m]
 * @param rEdge radial
 * @param aEdge axial
 * @param power of the chip, 1 for the linear model
 */
record ForceLaw(
    double tCut, double rCut, double aCut, double tEdge, double rEdge, double aEdge, double power) {
  private static final double MILLIMETRE = 1e-3;

  static ForceLaw of(Coefficients coefficients) {
    if (coefficients instanceof Coefficients.Kienzle k) {
      double t = k.kc11() * Math.pow(MILLIMETRE, k.mc());
      double a = k.axialKnown() ? k.axialRatio() * t : 0;
      return new ForceLaw(t, k.radialRatio() * t, a, 0, 0, 0, 1 - k.mc());
    }
    Coefficients.LinearEdge k = (Coefficients.LinearEdge) coefficients;
    return new ForceLaw(k.ktc(), k.krc(), k.kac(), k.kte(), k.kre(), k.kae(), 1);
  }

  double raised(double chip) {
    return power == 1 ? chip : Math.pow(chip, power);
  }
}
