package rundlauf.maths;

import org.hipparchus.distribution.continuous.ChiSquaredDistribution;
import org.hipparchus.distribution.continuous.FDistribution;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TDistribution;

/** The few distribution functions that metrology needs, by name. */
public final class Distributions {
  private static final NormalDistribution NORMAL = new NormalDistribution();

  private Distributions() {}

  /** Probability that a standard normal number is at most {@code z}. */
  public static double normal(double z) {
    return NORMAL.cumulativeProbability(z);
  }

  /**
   * The z below which a standard normal number lies with probability {@code p}, 0 &lt; p &lt; 1.
   */
  public static double normalQuantile(double p) {
    return NORMAL.inverseCumulativeProbability(p);
  }

  /**
   * Two-sided coverage factor of Student's t.
   *
   * @param level coverage, 0 to 1, open
   * @param dof degrees of freedom, over 0; infinite for the normal
   * @return k such that ±k holds {@code level}
   */
  public static double coverageFactor(double level, double dof) {
    double p = 0.5 + level / 2;
    return dof > 1e6 ? normalQuantile(p) : new TDistribution(dof).inverseCumulativeProbability(p);
  }

  /**
   * Probability that Student's t with {@code dof} degrees of freedom is at most {@code t}; normal
   * for infinite dof.
   */
  public static double student(double t, double dof) {
    return dof > 1e6 ? normal(t) : new TDistribution(dof).cumulativeProbability(t);
  }

  /**
   * Probability that Fisher's F with the given degrees of freedom exceeds {@code f}; by the mirror
   * image F(d1, d2) &gt; f ⇔ F(d2, d1) &lt; 1/f, so that small tails keep their digits.
   */
  public static double fisherTail(double f, double numeratorDof, double denominatorDof) {
    return f <= 0
        ? 1
        : new FDistribution(denominatorDof, numeratorDof).cumulativeProbability(1 / f);
  }

  /** Probability that χ² with {@code dof} degrees of freedom exceeds {@code x}. */
  public static double chiSquareTail(double x, double dof) {
    return 1 - new ChiSquaredDistribution(dof).cumulativeProbability(x);
  }

  /**
   * The x below which χ² lies with probability {@code p} of the chance that it lies below {@code
   * most}.
   *
   * @param p 0 to 1, open
   * @param most over 0; infinite for the plain quantile
   */
  public static double chiSquareQuantile(double p, double dof, double most) {
    var chiSquare = new ChiSquaredDistribution(dof);
    double within = most == Double.POSITIVE_INFINITY ? 1 : chiSquare.cumulativeProbability(most);
    return chiSquare.inverseCumulativeProbability(p * within);
  }
}
