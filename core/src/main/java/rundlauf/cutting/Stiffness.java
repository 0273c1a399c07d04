package rundlauf.cutting;

/**
 * How the setup gives way at the cutter's tip, without the cutter's own bending.
 *
 * @param x static stiffness along the feed [N/m], over 0; infinite for rigid
 * @param y across it [N/m]
 */
public record Stiffness(double x, double y) {
  public static final Stiffness RIGID =
      new Stiffness(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);
}
