package rundlauf.maths;

/**
 * The standard normal distribution function from a table with cubic Hermite interpolation: within
 * 1e-12 of the exact value, and some fifty times as fast as the library's, which the coarse-scale
 * posterior calls a hundred thousand times a station.
 */
final class NormalTable {
  private static final double REACH = 9;
  private static final int PER_UNIT = 256;
  private static final int SIZE = (int) (2 * REACH * PER_UNIT) + 1;
  private static final double[] VALUE = new double[SIZE];
  private static final double[] SLOPE = new double[SIZE];

  static {
    for (int i = 0; i < SIZE; i++) {
      double z = i / (double) PER_UNIT - REACH;
      VALUE[i] = Distributions.normal(z);
      SLOPE[i] = Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI) / PER_UNIT;
    }
  }

  private NormalTable() {}

  /**
   * Probability that a standard normal number lies in [low, high].
   *
   * @param low any number
   * @param high at least {@code low}
   * @return probability, 0 to 1; beyond 9 standard deviations 0
   */
  static double between(double low, double high) {
    // In the upper tail both ends are close to 1: turn to the lower tail, where nothing cancels.
    return low > 0 ? below(-low) - below(-high) : below(high) - below(low);
  }

  private static double below(double z) {
    if (z <= -REACH) {
      return 0;
    }
    if (z >= REACH) {
      return 1;
    }
    double at = (z + REACH) * PER_UNIT;
    int i = (int) at;
    if (i >= SIZE - 1) {
      return 1;
    }
    double t = at - i;
    double rise = VALUE[i + 1] - VALUE[i];
    double c2 = 3 * rise - 2 * SLOPE[i] - SLOPE[i + 1];
    double c3 = SLOPE[i] + SLOPE[i + 1] - 2 * rise;
    return VALUE[i] + t * (SLOPE[i] + t * (c2 + t * c3));
  }
}
