package rundlauf.simulated;

/**
 * A lobe of the body touched; it turns with the shank.
 *
 * @param order 2, 3, … high spots a turn
 * @param amplitude [m]
 * @param highSpot spindle angle of one high spot, the shank's clock angle 0 [rad]
 */
public record Lobe(int order, double amplitude, double highSpot) {
  /** Height at spindle angle {@code theta}, the shank turned forward by {@code clock}. */
  public double at(double theta, double clock) {
    return amplitude * Math.cos(order * (theta + clock - highSpot));
  }
}
