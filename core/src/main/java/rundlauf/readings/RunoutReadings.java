package rundlauf.readings;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rundlauf.maths.Samples;
import rundlauf.quantity.Quantity;

/**
 * A runout trial understood. Lengths in metres, angles in radians, struck rows left out.
 *
 * @param gaugeDiameter diameter of the body touched
 * @param tip height of the cutting edges above the nut's front face
 * @param angleLimit how well angles are set: half-width of a rectangular distribution, rad
 * @param sweeps one for each combination of station, clamping and clock angles, in the order first
 *     met
 */
public record RunoutReadings(
    TrialHead head,
    IndicatorLimits indicator,
    OptionalDouble gaugeDiameter,
    Optional<Quantity> tip,
    double angleLimit,
    List<Sweep> sweeps) {

  public RunoutReadings {
    sweeps = List.copyOf(sweeps);
  }

  /**
   * One way round (or several turns) at one station, in the order taken.
   *
   * @param station distance from the nut's front face; empty when none was given
   * @param clamping 1, 2, …
   * @param collet how far the collet's mark stands forward of the spindle's
   * @param shank how far the shank's mark stands forward of the spindle's
   * @param angle angles turned; above 2π in the next turn. Empty when only a swing was read
   * @param reading as many readings, rising as the surface moves toward the indicator
   * @param swing what the needle swung, when read by eye instead
   * @param line of the file where the sweep begins
   */
  public record Sweep(
      OptionalDouble station,
      int clamping,
      OptionalDouble collet,
      OptionalDouble shank,
      Samples angle,
      Samples reading,
      OptionalDouble swing,
      int line) {}
}
