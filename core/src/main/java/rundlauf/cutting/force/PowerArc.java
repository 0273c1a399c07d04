package rundlauf.cutting.force;

import rundlauf.cutting.Coefficients.Kienzle;
import rundlauf.cutting.chip.ChipArc;

/**
 * Kienzle's law {@code kc = kc11 h^−mc}: the tangential force by length is kc11 h^(1−mc), the
 * others in proportion; no edge force, for it is in kc. The power has no closed integral, so
 * running integrals stand at even angles.
 */
final class PowerArc implements ArcForce {
  /** Widest step [rad]: our choice, power to 1e-5 (docs/methods/force.md). */
  private static final double STEP = Math.PI / 45;

  private static final double MILLIMETRE = 1e-3;

  private final Kienzle k;
  private final RunningIntegral plain;
  private final RunningIntegral sine;
  private final RunningIntegral cosine;

  PowerArc(Kienzle k, ChipArc arc) {
    this.k = k;
    int steps = Math.max(1, (int) Math.ceil((arc.to() - arc.from()) / STEP));
    double[] phi = RunningIntegral.points(arc.from(), arc.to(), steps);
    double[] force = new double[phi.length];
    double[] bySine = new double[phi.length];
    double[] byCosine = new double[phi.length];
    for (int i = 0; i < phi.length; i++) {
      double sin = Math.sin(phi[i]);
      force[i] = tangential(k, arc.rise() * sin + arc.lead());
      bySine[i] = force[i] * sin;
      byCosine[i] = force[i] * Math.cos(phi[i]);
    }
    plain = new RunningIntegral(arc.from(), arc.to(), steps, force);
    sine = new RunningIntegral(arc.from(), arc.to(), steps, bySine);
    cosine = new RunningIntegral(arc.from(), arc.to(), steps, byCosine);
  }

  /**
   * Tangential force by length of edge [N/m] at a chip [m]; 0 for none.
   *
   * <p>Pascal times metre with h in millimetres in the power: kc11 (h/mm)^−mc h.
   */
  static double tangential(Kienzle k, double chip) {
    return chip <= 0 ? 0 : k.kc11() * Math.pow(chip / MILLIMETRE, -k.mc()) * chip;
  }

  @Override
  public void add(
      double a, double sinA, double cosA, double b, double sinB, double cosB, double[] sum) {
    double one = plain.at(b) - plain.at(a);
    double bySine = sine.at(b) - sine.at(a);
    double byCosine = cosine.at(b) - cosine.at(a);
    sum[0] -= byCosine + k.radialRatio() * bySine;
    sum[1] += bySine - k.radialRatio() * byCosine;
    sum[2] += k.axialKnown() ? k.axialRatio() * one : 0;
    sum[3] += one;
  }
}
