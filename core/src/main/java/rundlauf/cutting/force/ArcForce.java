package rundlauf.cutting.force;

/** Force of one stretch of a tooth's way at one height, summed over a part of it. */
interface ArcForce {
  /**
   * Adds the integrals over the tooth's angle, from a to b, of the force by length of edge.
   *
   * @param a from [rad], with its sine and cosine; within the stretch
   * @param b to [rad], with its sine and cosine
   * @param sum x, y, axial and tangential force [N rad/m], added to
   */
  void add(double a, double sinA, double cosA, double b, double sinB, double cosB, double[] sum);
}
