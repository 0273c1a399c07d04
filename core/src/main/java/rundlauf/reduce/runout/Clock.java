package rundlauf.reduce.runout;

/**
 * How collet and shank stand in a clamping: each part's mark forward of the spindle's mark. A part
 * whose mark is not given was not turned from it, and stands at 0.
 *
 * @param collet [rad]
 * @param shank [rad]
 */
record Clock(double collet, double shank) {
  /** Two clock angles are one when they differ by less [rad]: they are typed, not measured. */
  private static final double SAME = 1e-6;

  static boolean same(double a, double b) {
    return Math.abs(Math.IEEEremainder(a - b, 2 * Math.PI)) < SAME;
  }

  boolean same(Clock other) {
    return same(collet, other.collet) && same(shank, other.shank);
  }
}
