package rundlauf.simulated;

/**
 * The truth about a motor's speed against its setting; speeds in turns per second.
 *
 * @param deadBelow setting under which it stands still
 * @param startsAt speed just above that
 * @param saturatesAbove setting over which the speed stays
 * @param top speed there
 * @param bow how far the curve lies over the straight line at its middle, as a part of top −
 *     startsAt
 * @param idlePower power at the plug when running free at top speed [W]
 */
public record Drive(
    double deadBelow,
    double startsAt,
    double saturatesAbove,
    double top,
    double bow,
    double idlePower) {

  /** Straight from {@code deadBelow} to {@code saturatesAbove}. */
  public static Drive straight(
      double deadBelow, double startsAt, double saturatesAbove, double top) {
    return new Drive(deadBelow, startsAt, saturatesAbove, top, 0, 0);
  }

  public Drive bowed(double part) {
    return new Drive(deadBelow, startsAt, saturatesAbove, top, part, idlePower);
  }

  public Drive drawing(double watts) {
    return new Drive(deadBelow, startsAt, saturatesAbove, top, bow, watts);
  }

  /** The true idle speed at {@code setting}. */
  public double speed(double setting) {
    if (setting < deadBelow) {
      return 0;
    }
    double x = Math.min(1, (setting - deadBelow) / (saturatesAbove - deadBelow));
    return startsAt + (top - startsAt) * (x + 4 * bow * x * (1 - x));
  }
}
