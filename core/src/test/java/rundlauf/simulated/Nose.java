package rundlauf.simulated;

/**
 * The truth about how a spindle's nose gives way.
 *
 * @param compliance along the pushes, without the shank's own bending [m/N]
 * @param play the gap it can be moved through by almost no force [m]
 * @param restLag where it rests within the play when unloaded: 1 on the side it was last pushed to,
 *     0 anywhere
 * @param hysteresis width of the loop between rising and falling load [m]
 * @param stiffening relative loss of compliance for each newton (curvature) [1/N]
 */
public record Nose(
    double compliance, double play, double restLag, double hysteresis, double stiffening) {

  /** A straight line through nothing but the stiffness [N/m]. */
  public static Nose clean(double stiffness) {
    return new Nose(1 / stiffness, 0, 0, 0, 0);
  }

  public Nose withPlay(double gap, double lag) {
    return new Nose(compliance, gap, lag, hysteresis, stiffening);
  }

  public Nose withHysteresis(double width) {
    return new Nose(compliance, play, restLag, width, stiffening);
  }

  public Nose withStiffening(double perNewton) {
    return new Nose(compliance, play, restLag, hysteresis, perNewton);
  }

  /** What the parts behind the shank bend under a signed force [N], without play or friction. */
  double bend(double force) {
    return compliance * force * (1 - stiffening * Math.abs(force));
  }
}
