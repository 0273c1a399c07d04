package rundlauf.readings;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A growth trial understood: where the nose stood while the spindle warmed. SI; struck rows left
 * out.
 *
 * @param reference where the indicator's foot stands: table, base, carriage, mount
 * @param warmedBefore how long the spindle had run before, as the conditions say [s]
 * @param points in the order taken, their times not falling, at least four of them different
 */
public record GrowthReadings(
    TrialHead head,
    IndicatorLimits indicator,
    Optional<String> reference,
    OptionalDouble warmedBefore,
    List<Point> points) {
  public GrowthReadings {
    points = List.copyOf(points);
  }

  /**
   * One reading.
   *
   * @param time as typed [s]
   * @param reading the dial's own [m]
   * @param temperature of the spindle [°C]
   * @param line in the file
   */
  public record Point(double time, double reading, OptionalDouble temperature, int line) {}

  /** When the spindle is taken to have started: the first reading's time [s]. */
  public double start() {
    return points.get(0).time();
  }

  /** How long it was read [s]. */
  public double span() {
    return points.get(points.size() - 1).time() - start();
  }
}
