package rundlauf.report;

import java.util.List;
import java.util.Optional;
import rundlauf.readings.LoadReadings.Point;
import rundlauf.reduce.push.Line;

/**
 * A fitted line of a trial that pushes the nose, as the dial would have read it.
 *
 * @param facing cosine between push and dial
 * @param most the largest load of its side [N]
 */
record FittedLine(Line line, double facing, double most) {
  /** The line over its own points; empty when none of them bears a load. */
  static Optional<FittedLine> of(Line line, List<Point> points) {
    List<Point> own = points.stream().filter(p -> belongs(p, line)).toList();
    return own.stream()
        .findFirst()
        .map(
            p ->
                new FittedLine(
                    line,
                    Math.cos(p.direction() - p.dial()),
                    own.stream().mapToDouble(Point::load).max().orElseThrow()));
  }

  /** Whether a point is one that the line may have been fitted to. */
  static boolean belongs(Point p, Line line) {
    return p.load() > 0 && p.place().equals(line.place()) && p.direction() == line.direction();
  }

  /** The load's part along the dial. */
  double along(double load) {
    return load * facing;
  }

  /** What the dial would read [m] at a load [N]; a push against the dial lowers its reading. */
  double reading(double load) {
    return Math.signum(facing) * (line.intercept() + line.compliance() * load);
  }
}
