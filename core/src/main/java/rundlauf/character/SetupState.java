package rundlauf.character;

/**
 * One state that a setup may be in, SI: a draw of all its traits together. What is not known is as
 * if it were no limit: no runout, rigid, any speed, any power.
 *
 * @param eccentricity of the axis at the tip, in the next clamping [m]
 * @param firstTooth how far tooth 1 at the tip stands ahead of the high spot [rad]
 * @param tilt change of the offset with height above the tip [m/m]
 * @param tiltAngle how far tooth 1 at the tip stands ahead of the tilt's high spot [rad]
 * @param stiffnessX at the tip along the feed, without the cutter's own bending [N/m]
 * @param stiffnessY across it [N/m]
 * @param slowest usable speed [turns/s]
 * @param fastest usable speed, idle [turns/s]
 * @param droop speed lost for each watt of load [turns/s/W]
 * @param power at the shaft at {@code powerAt} [W]
 * @param powerAt [turns/s]; below it power is proportional to speed
 */
public record SetupState(
    double eccentricity,
    double firstTooth,
    double tilt,
    double tiltAngle,
    double stiffnessX,
    double stiffnessY,
    double slowest,
    double fastest,
    double droop,
    double power,
    double powerAt) {

  /** Power to be had at a speed [turns/s]: proportional to it up to {@code powerAt} [W]. */
  public double powerAt(double speed) {
    return power * Math.min(1, speed / powerAt);
  }
}
