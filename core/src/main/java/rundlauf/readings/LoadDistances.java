package rundlauf.readings;

import java.util.List;
import java.util.Optional;
import rundlauf.quantity.Place;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Refused;
import rundlauf.quantity.Unit;
import rundlauf.readings.LoadReadings.Point;

/**
 * Where the load was: the trial's own distance, and points that have another.
 *
 * @param trial as given, if a load was there; else that of the first row under load that has one
 * @param points those at the trial's distance without one of their own
 */
record LoadDistances(Optional<Quantity> trial, List<Point> points) {
  /** Distances that differ by less are one [m]; far below what a rule shows. */
  private static final double SAME = 1e-9;

  /**
   * Sorts the rows' distances.
   *
   * @throws Refused {@code load-distance-missing} for a row under load that has none, where neither
   *     the trial gives one and other rows do
   */
  static LoadDistances of(Optional<Quantity> given, List<Point> points, String file) {
    Optional<Quantity> trial =
        used(given, points)
            .or(
                () ->
                    points.stream()
                        .filter(p -> p.load() > 0 && p.contact().isPresent())
                        .findFirst()
                        .flatMap(Point::contact)
                        .map(at -> Quantity.exact(at, Unit.MILLIMETRE)));
    if (given.isEmpty() && trial.isPresent()) {
      points.stream().filter(p -> p.load() > 0).forEach(p -> require(p, file));
    }
    return new LoadDistances(trial, points.stream().map(p -> sorted(p, trial)).toList());
  }

  /** What the trial gives, unless every row under load has another. */
  private static Optional<Quantity> used(Optional<Quantity> given, List<Point> points) {
    return given.filter(
        own ->
            points.stream()
                .filter(p -> p.load() > 0)
                .anyMatch(p -> sorted(p, given).contact().isEmpty()));
  }

  private static void require(Point point, String file) {
    if (point.contact().isEmpty()) {
      throw Refused.at(new Place(file, point.line(), 0, "readings"), "load-distance-missing");
    }
  }

  private static Point sorted(Point point, Optional<Quantity> trial) {
    double at = trial.map(Quantity::si).orElse(Double.NaN);
    return point.loadedAt(point.contact().filter(own -> !(Math.abs(own - at) < SAME)));
  }
}
