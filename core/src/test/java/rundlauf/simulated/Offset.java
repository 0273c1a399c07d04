package rundlauf.simulated;

/**
 * A vector in the plane across the spindle, E = a + i b, as in {@code y = a cos θ + b sin θ}.
 *
 * @param a metres (or metres a metre, for a tilt)
 * @param b as {@code a}
 */
public record Offset(double a, double b) {
  public static final Offset NONE = new Offset(0, 0);

  /** Of the given amplitude, highest at spindle angle {@code highSpot} [rad]. */
  public static Offset of(double amplitude, double highSpot) {
    return new Offset(amplitude * Math.cos(highSpot), amplitude * Math.sin(highSpot));
  }

  public Offset plus(Offset other) {
    return new Offset(a + other.a, b + other.b);
  }

  public Offset times(double factor) {
    return new Offset(factor * a, factor * b);
  }

  /** The part turned forward by {@code clock} [rad]: it reads highest so much earlier. */
  public Offset clocked(double clock) {
    double cos = Math.cos(clock);
    double sin = Math.sin(clock);
    return new Offset(a * cos + b * sin, b * cos - a * sin);
  }

  public double amplitude() {
    return Math.hypot(a, b);
  }

  /** Spindle angle of the high spot, in [0, 2π). */
  public double highSpot() {
    double angle = Math.atan2(b, a);
    return angle < 0 ? angle + 2 * Math.PI : angle;
  }

  /** What it adds to the reading at spindle angle {@code theta} [rad]. */
  public double at(double theta) {
    return a * Math.cos(theta) + b * Math.sin(theta);
  }
}
