package rundlauf.cutting;

import rundlauf.maths.Samples;

/**
 * How well force coefficients are known.
 *
 * @param common standard deviation of the logarithm of a factor common to all of them, 0 or more:
 *     0.2 is 20 % up or down, and a factor of 1.5 either way at 95 %
 * @param limits standard uncertainty of each from its own limits (half-width / √3), in the order of
 *     the record, without its last place; SI
 */
public record CoefficientDoubt(double common, Samples limits) {
  public CoefficientDoubt {
    if (!(common >= 0)) {
      throw new IllegalArgumentException("spread " + common + " of the common factor is below 0");
    }
  }

  /** A common factor alone. */
  public static CoefficientDoubt common(double spread) {
    return new CoefficientDoubt(spread, Samples.of());
  }

  /** The factor either way that the common doubt stays within at 95 %. */
  public double factor() {
    return Math.exp(1.96 * common);
  }
}
