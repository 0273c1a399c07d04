package rundlauf.reduce.sideload;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rundlauf.maths.Draws;
import rundlauf.maths.Work;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Unit;
import rundlauf.readings.LoadReadings;
import rundlauf.readings.LoadReadings.Branch;
import rundlauf.readings.LoadReadings.Point;

/** Readings written down at several places of a row of bodies, the load 10 mm out. */
final class WrittenPlaces {
  private static final double STEP = 1e-9;

  private WrittenPlaces() {}

  /** Five loads up and down at one place that travels so many µm/N. */
  static List<Point> place(String place, double atMm, double umPerN) {
    return points(place, Optional.of(atMm / 1000), umPerN);
  }

  static List<Point> placeless(String place, double umPerN) {
    return points(place, Optional.empty(), umPerN);
  }

  private static List<Point> points(String place, Optional<Double> at, double umPerN) {
    int zeroed = place.hashCode() + at.hashCode();
    List<Point> points = new ArrayList<>();
    for (int i = 0; i <= 10; i++) {
      double load = 5 * (i <= 5 ? i : 10 - i);
      double read = STEP * Math.rint(umPerN * 1e-6 * load / STEP);
      points.add(new Point(load, read, place, at, 0, 0, Branch.UNSAID, zeroed, i + 1));
    }
    return points;
  }

  /** The same, pushed and read along another axis. */
  static List<Point> turned(List<Point> points, double by) {
    return points.stream()
        .map(
            p ->
                new Point(
                    p.load(),
                    p.reading(),
                    p.place(),
                    p.at(),
                    p.direction() + by,
                    p.dial() + by,
                    p.branch(),
                    p.zeroed(),
                    p.line()))
        .toList();
  }

  static LoadReadings readings(List<Point> points, Optional<String> reference) {
    var body =
        new LoadReadings.Body(
            Quantity.exact(3e-3, Unit.MILLIMETRE), Quantity.exact(6e11, Unit.GIGAPASCAL));
    return new LoadReadings(
        PushedNose.HEAD,
        PushedNose.dial(STEP, Optional.empty(), OptionalDouble.empty()),
        rundlauf.quantity.Measured.exact(1, Unit.ONE),
        Optional.of(Quantity.exact(0.01, Unit.MILLIMETRE)),
        Optional.of(body),
        reference,
        Optional.empty(),
        points);
  }

  static Shares reduced(List<Point> points, Optional<String> reference) {
    return SideLoadReduction.reduce(
            readings(points, reference), new Draws(3, 400), Work.sequential())
        .compliances()
        .shares();
  }
}
