package rundlauf.cutting.force;

import rundlauf.cutting.Coefficients.LinearEdge;
import rundlauf.cutting.chip.ChipArc;

/**
 * Linear edge-force model in closed form.
 *
 * @see "E. Budak, Y. Altintas, E.J.A. Armarego, J. Manuf. Sci. Eng. 118 (1996) 216-224"
 */
final class LinearArc implements ArcForce {
  private final double tRise;
  private final double tFlat;
  private final double rRise;
  private final double rFlat;
  private final double aRise;
  private final double aFlat;

  /** With {@code h = rise sin φ + lead} each force is (K_c rise) sin φ + (K_c lead + K_e). */
  LinearArc(LinearEdge k, ChipArc arc) {
    tRise = k.ktc() * arc.rise();
    tFlat = k.ktc() * arc.lead() + k.kte();
    rRise = k.krc() * arc.rise();
    rFlat = k.krc() * arc.lead() + k.kre();
    aRise = k.kac() * arc.rise();
    aFlat = k.kac() * arc.lead() + k.kae();
  }

  @Override
  public void add(
      double a, double sinA, double cosA, double b, double sinB, double cosB, double[] sum) {
    double one = b - a;
    double sine = cosA - cosB;
    double cosine = sinB - sinA;
    double product = (sinB * sinB - sinA * sinA) / 2;
    double square = (one - sinB * cosB + sinA * cosA) / 2;
    sum[0] -= tRise * product + tFlat * cosine + rRise * square + rFlat * sine;
    sum[1] += tRise * square + tFlat * sine - rRise * product - rFlat * cosine;
    sum[2] += aRise * sine + aFlat * one;
    sum[3] += tRise * sine + tFlat * one;
  }
}
