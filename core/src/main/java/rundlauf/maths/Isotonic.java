package rundlauf.maths;

/**
 * The least-squares fit that never falls, by pooling adjacent violators (Ayer, Brunk, Ewing, Reid
 * and Silverman 1955; from memory).
 */
public final class Isotonic {
  private Isotonic() {}

  /**
   * Fits the rising step values nearest to {@code y}.
   *
   * @param y n numbers in the order of their abscissa
   * @param weights n numbers over 0
   * @return n numbers, none less than the one before; pooled neighbours have equal numbers. A row
   *     that never falls is returned as it is
   */
  public static Samples fit(Samples y, Samples weights) {
    int n = y.size();
    double[] level = new double[n];
    double[] weight = new double[n];
    int[] length = new int[n];
    int blocks = 0;
    for (int i = 0; i < n; i++) {
      level[blocks] = y.get(i);
      weight[blocks] = weights.get(i);
      length[blocks] = 1;
      blocks++;
      while (blocks > 1 && level[blocks - 2] > level[blocks - 1]) {
        double sum = weight[blocks - 2] + weight[blocks - 1];
        level[blocks - 2] =
            (level[blocks - 2] * weight[blocks - 2] + level[blocks - 1] * weight[blocks - 1]) / sum;
        weight[blocks - 2] = sum;
        length[blocks - 2] += length[blocks - 1];
        blocks--;
      }
    }
    return spread(level, length, n);
  }

  private static Samples spread(double[] level, int[] length, int n) {
    double[] fitted = new double[n];
    int at = 0;
    for (int block = 0; at < n; block++) {
      for (int k = 0; k < length[block]; k++) {
        fitted[at] = level[block];
        at++;
      }
    }
    return Samples.of(fitted);
  }
}
