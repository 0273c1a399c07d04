package rundlauf.simulated;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import rundlauf.maths.Samples;
import rundlauf.maths.Stream;
import rundlauf.readings.SpeedReadings;
import rundlauf.readings.TrialHead;

/**
 * A speed trial taken on paper, with what was true.
 *
 * @param drive the truth
 * @param tachometer with what it was read
 * @param rows in the order taken
 */
public record TakenSpeed(Drive drive, Tachometer tachometer, List<Row> rows) {
  public TakenSpeed {
    rows = List.copyOf(rows);
  }

  /**
   * One reading.
   *
   * @param setting in its unit
   * @param steps speed as whole steps of the tachometer
   * @param power at the plug [W]
   */
  public record Row(double setting, long steps, OptionalDouble power) {}

  /** Each setting in turn, idling. */
  public static TakenSpeed take(
      Stream stream, Drive drive, Tachometer tachometer, List<Double> settings) {
    List<Row> rows = new ArrayList<>();
    for (double setting : settings) {
      double speed = drive.speed(setting);
      OptionalDouble power =
          drive.idlePower() > 0
              ? OptionalDouble.of(Math.rint(drive.idlePower() * speed / drive.top()))
              : OptionalDouble.empty();
      rows.add(new Row(setting, tachometer.steps(speed, stream), power));
    }
    return new TakenSpeed(drive, tachometer, rows);
  }

  /** The readings as a trial file understood would give them. */
  public SpeedReadings readings(String file, String settingUnit, double... wanted) {
    var head =
        new TrialHead(
            file, "speed", Optional.empty(), Optional.empty(), Optional.empty(), Map.of());
    List<SpeedReadings.Point> points = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      Row r = rows.get(i);
      points.add(
          new SpeedReadings.Point(r.setting(), r.steps() * tachometer.step(), r.power(), i + 1));
    }
    return new SpeedReadings(head, settingUnit, Samples.of(wanted), points);
  }
}
