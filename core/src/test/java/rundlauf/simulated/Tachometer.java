package rundlauf.simulated;

import rundlauf.maths.Stream;

/**
 * A cheap tachometer and an unsteady motor.
 *
 * @param step what it is read to [1/s]
 * @param noise relative sd of a reading
 * @param scale relative error common to all readings
 */
public record Tachometer(double step, double noise, double scale) {
  /** Right, but for being read to {@code step}. */
  public static Tachometer clean(double step) {
    return new Tachometer(step, 0, 0);
  }

  /** The reading as whole steps; 0 when it stands. */
  long steps(double speed, Stream stream) {
    double shown = speed * (1 + scale) * (1 + noise * stream.gaussian());
    return speed == 0 ? 0 : Math.round(shown / step);
  }
}
