package rundlauf.reduce.axial;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import rundlauf.maths.Draws;
import rundlauf.maths.Work;
import rundlauf.quantity.Measured;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.readings.IndicatorLimits;
import rundlauf.readings.LoadReadings;
import rundlauf.readings.LoadReadings.Branch;
import rundlauf.readings.LoadReadings.Point;
import rundlauf.readings.TrialHead;

/** Axial trials with readings written down, and what they are reduced to. */
final class WrittenAxials {
  /** A dial so fine that the readings are what was put in. */
  static final double FINE = 1e-9;

  private static final Draws DRAWS = new Draws(1, 2000);

  private WrittenAxials() {}

  /** Pushed and pulled with 5 to 25 N, a weight hanging on the bearings all the while. */
  static List<Point> bothWays(double compliance, double play, double loop, double weight) {
    List<Point> points = new ArrayList<>();
    for (double direction : new double[] {0, Math.PI}) {
      double sign = Math.cos(direction);
      points.add(point(0, sign * play / 5, direction, Branch.UP));
      for (int i = 1; i <= 9; i++) {
        int load = i <= 5 ? 5 * i : 5 * (10 - i);
        double branch = i <= 5 ? -loop / 2 : loop / 2;
        double travel = compliance * (sign * load - weight) + sign * (play / 2 + branch);
        points.add(point(load, travel, direction, i <= 5 ? Branch.UP : Branch.DOWN));
      }
    }
    return points;
  }

  static Point point(double load, double reading, double direction, Branch branch) {
    return new Point(load, reading, "nut", Optional.empty(), direction, 0, branch, 1, 1);
  }

  static Axial reduce(double step, List<Point> points) {
    return reduce(readings(step, points));
  }

  static Axial reduce(LoadReadings readings) {
    return AxialReduction.reduce(readings, DRAWS, Work.sequential());
  }

  static LoadReadings readings(double step, List<Point> points) {
    OptionalDouble no = OptionalDouble.empty();
    return new LoadReadings(
        new TrialHead(
            "a.yaml", "axial", Optional.empty(), Optional.empty(), Optional.empty(), Map.of()),
        new IndicatorLimits(
            "indicator/dial", step, step, Optional.empty(), no, no, no, Optional.empty()),
        Measured.exact(1, Unit.ONE),
        Optional.empty(),
        Optional.empty(),
        Optional.of("mount"),
        Optional.empty(),
        points);
  }

  static List<String> codes(List<Saying> sayings) {
    return sayings.stream().map(Saying::code).toList();
  }
}
