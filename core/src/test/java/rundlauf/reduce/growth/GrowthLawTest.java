package rundlauf.reduce.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rundlauf.reduce.growth.WarmingNose.readings;
import static rundlauf.reduce.growth.WarmingNose.reduce;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rundlauf.maths.Stream;
import rundlauf.quantity.Figure;
import rundlauf.readings.GrowthReadings;
import rundlauf.readings.GrowthReadings.Point;

/** What must change with the readings, and what must not. */
class GrowthLawTest {
  private static final WarmingNose NOSE = new WarmingNose(50e-6, 600, 2e-6, 120, 3600);

  private static GrowthReadings taken() {
    return NOSE.taken(Stream.of(11, "growth"));
  }

  private static List<Point> changed(UnaryOperator<Point> change) {
    return taken().points().stream().map(change).toList();
  }

  private static Point at(Point p, double time, double reading) {
    return new Point(time, reading, p.temperature(), p.line());
  }

  private static void same(Figure found, Figure before, double times) {
    Figure.Estimate e = found.estimate().orElseThrow();
    Figure.Estimate f = before.estimate().orElseThrow();
    // A draw may change places at the last digit: far under what a draw weighs.
    double alike = 1e-3 * Math.abs(times * f.value());
    assertThat(e.value()).isCloseTo(times * f.value(), within(alike));
    assertThat(e.interval().low()).isCloseTo(times * f.interval().low(), within(alike));
    assertThat(e.interval().high()).isCloseTo(times * f.interval().high(), within(alike));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-600, 30, 7200})
  void startingTheClockElsewhereChangesNothing(double by) {
    Growth found = reduce(readings(10e-6, changed(p -> at(p, p.time() + by, p.reading()))));
    Growth before = reduce(taken());
    found.figures().forEach((path, f) -> same(path, found, before, 1));
  }

  private static void same(String path, Growth found, Growth before, double times) {
    if (!path.equals("perKelvin")) {
      same(figure(found, path), figure(before, path), times);
    }
  }

  private static Figure figure(Growth growth, String path) {
    return Optional.ofNullable(growth.figures().get(path)).orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({"0.1, 1", "3, 0.5", "25.4, 60"})
  void readingsAndTimesScaleFigures(double length, double time) {
    Growth found =
        reduce(
            readings(length * 10e-6, changed(p -> at(p, time * p.time(), length * p.reading()))));
    Growth before = reduce(taken());
    same("growth", found, before, length);
    same("timeConstant", found, before, time);
    same("settledAfter", found, before, time);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 30e-6})
  void aDialThatReadsTheOtherWayTurnsTheSignAndNothingElse(double zero) {
    Growth found = reduce(readings(10e-6, changed(p -> at(p, p.time(), zero - p.reading()))));
    Growth before = reduce(taken());
    double u = before.growth().estimate().orElseThrow().u();
    assertThat(found.growth().value()).isCloseTo(-before.growth().value(), within(0.2 * u));
    double ofTime = before.timeConstant().estimate().orElseThrow().u();
    assertThat(found.timeConstant().value())
        .isCloseTo(before.timeConstant().value(), within(0.2 * ofTime));
  }
}
