package rundlauf.reduce.sideload;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rundlauf.maths.Draws;
import rundlauf.maths.Work;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Saying;
import rundlauf.readings.IndicatorLimits;
import rundlauf.readings.LoadReadings;
import rundlauf.readings.LoadReadings.Branch;
import rundlauf.readings.LoadReadings.Point;

/** Side-load trials with readings written down, and what they are reduced to. */
final class WrittenPushes {
  private static final Draws DRAWS = new Draws(1, 2000);

  private WrittenPushes() {}

  static List<Point> bothWays(double compliance, double play, double loop) {
    List<Point> points = new ArrayList<>();
    for (int direction = 0; direction <= 180; direction += 180) {
      double sign = direction == 0 ? 1 : -1;
      points.add(point(0, sign * play / 5, direction, Branch.UP));
      for (int i = 1; i <= 5; i++) {
        double up = compliance * 5 * i + play / 2 - loop / 2;
        points.add(point(5 * i, sign * up, direction, Branch.UP));
      }
      for (int i = 4; i >= 1; i--) {
        double down = compliance * 5 * i + play / 2 + loop / 2;
        points.add(point(5 * i, sign * down, direction, Branch.DOWN));
      }
    }
    return points;
  }

  static Point point(double load, double reading, double degrees, Branch branch) {
    return new Point(
        load, reading, "shank", Optional.empty(), Math.toRadians(degrees), 0, branch, 1, 1);
  }

  static LoadReadings readings(double step, List<Point> points, double forceLimit) {
    IndicatorLimits dial = PushedNose.dial(step, Optional.empty(), OptionalDouble.empty());
    return PushedNose.readings(points, forceLimit, dial, PushedNose.HEAD);
  }

  static SideLoad reduce(double step, List<Point> points) {
    return reduce(readings(step, points, 0));
  }

  static SideLoad reduce(LoadReadings readings) {
    return SideLoadReduction.reduce(readings, DRAWS, Work.sequential());
  }

  static Saying why(Figure figure) {
    return ((Missing) figure).why();
  }

  static List<String> codes(List<Saying> sayings) {
    return sayings.stream().map(Saying::code).toList();
  }
}
