package rundlauf.readings;

import java.util.List;
import java.util.OptionalDouble;
import rundlauf.maths.Samples;

/**
 * A speed trial understood. Speeds in turns per second.
 *
 * @param settingUnit {@code ""} for a bare dial number, {@code %} or {@code V}
 * @param wanted speeds whose setting is asked for
 * @param points in the order taken
 */
public record SpeedReadings(
    TrialHead head, String settingUnit, Samples wanted, List<Point> points) {
  public SpeedReadings {
    points = List.copyOf(points);
  }

  /**
   * One reading.
   *
   * @param setting in its unit
   * @param speed turns per second, 0 when it did not turn
   * @param power at the plug [W]
   * @param line in the file
   */
  public record Point(double setting, double speed, OptionalDouble power, int line) {}
}
