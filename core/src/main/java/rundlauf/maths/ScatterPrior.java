package rundlauf.maths;

/**
 * What is believed of the scatter σ of a reading before the readings are seen, in steps of the
 * scale: (1 + (σ/0.3)²) to the power −0.9, which is half of Student's t on 0.8 degrees of freedom
 * with the scale 0.3/√0.8.
 *
 * <p>Our choice, because: around a third of a step is what a careful hand on a sound dial shows
 * (common practice, no source); the tail, as σ to the power −1.8, gives way to the readings where
 * they disagree by many steps, so that a fine scale agrees with least squares, and still has an
 * end, which a prior of 1/σ has not: readings that fit perfectly then say that σ is small, not that
 * it is 0. Chosen by the coverage tables in docs/quality.md.
 */
final class ScatterPrior {
  private static final double SCALE = 0.3;
  private static final double DOF = 0.8;

  private ScatterPrior() {}

  /** Logarithm of the density at {@code sigma} steps, up to a constant. */
  static double logDensity(double sigma) {
    double z = sigma / SCALE;
    return -(DOF + 1) / 2 * Math.log1p(z * z);
  }
}
