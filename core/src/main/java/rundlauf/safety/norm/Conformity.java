package rundlauf.safety.norm;

import rundlauf.maths.Distributions;
import rundlauf.quantity.Drawn;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Measured;
import rundlauf.reduce.NormVerdict.Outcome;

/** Whether a measured value lies within an upper limit, doubt counted (JCGM 106:2012, 7.2). */
public final class Conformity {
  /** Probability at which a verdict is proven; from memory: ISO 14253-1:2017, its default. */
  public static final double PROVEN = 0.95;

  private Conformity() {}

  /**
   * Probability that the value lies at or under a limit.
   *
   * @param figure known
   * @param limit largest allowed value, SI of the figure's dimension
   * @return 0 to 1: the weight of the draws within; of a linear figure Student's t with its degrees
   *     of freedom, 0 or 1 where it is exact
   * @throws IllegalArgumentException for a missing figure
   * @see "JCGM 106:2012, 7.2 and 7.3, equation (8)"
   */
  public static double probabilityWithin(Figure figure, double limit) {
    if (figure instanceof Drawn drawn) {
      return Math.min(1, Math.max(0, 1 - drawn.probabilityOver(limit)));
    }
    if (figure instanceof Measured measured) {
      double room = limit - measured.value();
      return measured.u() == 0
          ? (room >= 0 ? 1 : 0)
          : Distributions.student(room / measured.u(), measured.dof());
    }
    throw new IllegalArgumentException("a missing figure conforms to nothing");
  }

  /**
   * The verdict at that probability.
   *
   * @param within probability of lying within, 0 to 1
   */
  public static Outcome outcome(double within) {
    if (within >= PROVEN) {
      return Outcome.PROVEN;
    }
    return within <= 1 - PROVEN ? Outcome.DISPROVEN : Outcome.NOT_PROVEN;
  }

  /**
   * How far under a one-sided limit a normal value must lie to be proven, {@code z u}.
   *
   * @param u standard uncertainty, 0 or more
   * @return 1.6449 u; in the unit of u
   */
  public static double guardBand(double u) {
    return Distributions.normalQuantile(PROVEN) * u;
  }
}
