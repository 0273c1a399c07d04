package rundlauf.reduce.runout;

/**
 * The turns of two bodies against a still one that leave the least of the three together: lengths
 * that close a triangle leave nothing, others the longest less the rest.
 */
final class ClockTriangle {
  private static final double TURN = 2 * Math.PI;

  private ClockTriangle() {}

  /** Turn that sets a body's high spot opposite the still one's [rad, 0 to 2π]. */
  static double opposite(double stillSpot, double bodySpot) {
    return wrapped(bodySpot - stillSpot - Math.PI);
  }

  /**
   * Both ways in which the triangle closes; where it does not, the straight one twice.
   *
   * @param still a, b of the body that stays [m]
   * @param one a, b of the first body at clock 0 [m]
   * @param two a, b of the second body at clock 0 [m]
   * @return {turn of the first, turn of the second} twice, each in 0 to 2π [rad]
   * @see "law of cosines"
   */
  static double[][] turns(double[] still, double[] one, double[] two) {
    double a = length(still);
    double b = length(one);
    double c = length(two);
    double directed = direction(still) + Math.PI;
    // With nothing to close against, the two lie against each other.
    double first = a == 0 ? 0 : angle(a, b, c);
    double second = a == 0 ? Math.PI : angle(a, c, b);
    double[][] both = new double[2][];
    for (int side = 0; side < 2; side++) {
      double sign = side == 0 ? 1 : -1;
      both[side] =
          new double[] {
            wrapped(direction(one) - directed - sign * first),
            wrapped(direction(two) - directed + sign * second)
          };
    }
    return both;
  }

  /**
   * Between the still side turned back and a body's, opposite {@code facing}: with a side too long
   * for the rest they lie in line, against each other or together.
   */
  private static double angle(double still, double body, double facing) {
    if (body == 0) {
      return 0;
    }
    double cosine = (still * still + body * body - facing * facing) / (2 * still * body);
    return Math.acos(Math.max(-1, Math.min(1, cosine)));
  }

  static double length(double[] v) {
    return Math.hypot(v[0], v[1]);
  }

  static double direction(double[] v) {
    return Math.atan2(v[1], v[0]);
  }

  private static double wrapped(double angle) {
    return angle - TURN * Math.floor(angle / TURN);
  }
}
