package rundlauf.reduce.sideload;

/**
 * Two lines for the three coefficients of C(a, x) = c₀ + c₁ (a + x) + c₂ a x leave one open. It has
 * limits: no row of joints gives way against its load, so c₀ c₂ is at least c₁², and none tips
 * about a point in front of the nut's face, so c₁ is at least 0. With the first limit the whole
 * tips about one point.
 */
final class TwoLines {
  private static final double FLAT = 1e-9;

  private final double[][] rows;
  private final double[] open;

  TwoLines(double[][] rows) {
    this.rows = rows;
    this.open = cross(rows[0], rows[1]);
  }

  private static double[] cross(double[] a, double[] b) {
    return new double[] {
      a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]
    };
  }

  private double curvature() {
    return open[0] * open[2] - open[1] * open[1];
  }

  /** Whether the two lines differ and the limits leave one stretch. */
  boolean limited() {
    double size = dot(open, open);
    return size > FLAT && open[1] != 0 && curvature() <= FLAT * size;
  }

  /**
   * Coefficients that fit both lines.
   *
   * @param values of the lines
   * @param part 0 at one limit, 1 at the other
   * @return the three coefficients; where scatter leaves no stretch between the limits, those
   *     nearest to it
   */
  double[] solved(double[] values, double part) {
    double[] least = least(values);
    double face = -least[1] / open[1];
    double[] limits = tipping(least, face);
    double t = limits[0] + part * (limits[1] - limits[0]);
    double[] c = new double[3];
    for (int i = 0; i < 3; i++) {
      c[i] = least[i] + t * open[i];
    }
    return c;
  }

  /** The shortest coefficients that fit. */
  private double[] least(double[] values) {
    double a = dot(rows[0], rows[0]);
    double b = dot(rows[0], rows[1]);
    double d = dot(rows[1], rows[1]);
    double det = a * d - b * b;
    double first = (d * values[0] - b * values[1]) / det;
    double second = (a * values[1] - b * values[0]) / det;
    double[] c = new double[3];
    for (int i = 0; i < 3; i++) {
      c[i] = first * rows[0][i] + second * rows[1][i];
    }
    return c;
  }

  /** From where the whole tips about one point to where a point in the nut's face comes in. */
  private double[] tipping(double[] least, double face) {
    double quadratic = curvature();
    double linear = least[0] * open[2] + least[2] * open[0] - 2 * least[1] * open[1];
    double constant = least[0] * least[2] - least[1] * least[1];
    if (Math.abs(quadratic) <= FLAT * dot(open, open)) {
      double one = -constant / linear;
      double middle = (one + face) / 2;
      boolean both = linear * middle + constant >= 0 && least[1] + open[1] * middle >= 0;
      return both ? new double[] {one, face} : new double[] {face, face};
    }
    double inside = linear * linear - 4 * quadratic * constant;
    double middle = -linear / (2 * quadratic);
    double reach = inside <= 0 ? 0 : Math.sqrt(inside) / Math.abs(2 * quadratic);
    return new double[] {bounded(middle - reach, face), bounded(middle + reach, face)};
  }

  /** Moved to the side of {@code face} where c₁ is not negative. */
  private double bounded(double t, double face) {
    return open[1] > 0 ? Math.max(t, face) : Math.min(t, face);
  }

  private static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }
}
