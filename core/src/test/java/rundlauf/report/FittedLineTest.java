package rundlauf.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rundlauf.readings.LoadReadings.Branch;
import rundlauf.readings.LoadReadings.Point;
import rundlauf.reduce.push.Line;

class FittedLineTest {
  private static Point point(double load, double direction) {
    return new Point(load, 0, "shank", Optional.empty(), direction, 0, Branch.UP, 1, 5);
  }

  private static final List<Point> POINTS =
      List.of(point(0, 0), point(10, 0), point(20, 0), point(15, Math.PI));

  @Test
  void aPushAlongTheDialRaisesItsReading() {
    var line = new Line(0, "shank", 2e-6, 3e-6);
    FittedLine fit = FittedLine.of(line, POINTS).orElseThrow();
    assertThat(fit.most()).isEqualTo(20);
    assertThat(fit.along(20)).isEqualTo(20);
    assertThat(fit.reading(20)).isCloseTo(62e-6, within(1e-15));
  }

  @Test
  void aPushAgainstTheDialLowersIt() {
    var line = new Line(Math.PI, "shank", 2e-6, 3e-6);
    FittedLine fit = FittedLine.of(line, POINTS).orElseThrow();
    assertThat(fit.along(15)).isCloseTo(-15, within(1e-12));
    assertThat(fit.reading(15)).isCloseTo(-47e-6, within(1e-15));
  }

  @Test
  void aLineWithoutPointsIsNotDrawn() {
    assertThat(FittedLine.of(new Line(0, "nut", 0, 1e-6), POINTS)).isEmpty();
  }
}
