package rundlauf.reduce.growth;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import rundlauf.maths.Draws;
import rundlauf.maths.Stream;
import rundlauf.maths.Work;
import rundlauf.readings.GrowthReadings;
import rundlauf.readings.GrowthReadings.Point;
import rundlauf.readings.IndicatorLimits;
import rundlauf.readings.TrialHead;

/**
 * A nose that grows as its spindle warms, read with a coarse dial, as made readings.
 *
 * @param growth [m]
 * @param timeConstant [s]
 * @param scatter of a reading before it is rounded [m]
 * @param every time between readings [s]
 * @param span how long it is read [s]
 */
record WarmingNose(double growth, double timeConstant, double scatter, double every, double span) {
  static final double DIVISION = 10e-6;

  /** One trial, the dial's zero at a random phase. */
  GrowthReadings taken(Stream stream) {
    double zero = DIVISION * (stream.uniform() - 0.5);
    List<Point> points = new ArrayList<>();
    for (int i = 0; i * every <= span + 1e-9; i++) {
      double time = i * every;
      double at = zero + at(time) + scatter * stream.gaussian();
      points.add(point(time, DIVISION * Math.rint(at / DIVISION)));
    }
    return readings(DIVISION, points);
  }

  double at(double time) {
    return growth * -Math.expm1(-time / timeConstant);
  }

  static Point point(double time, double reading) {
    return new Point(time, reading, OptionalDouble.empty(), 1);
  }

  static GrowthReadings readings(double step, List<Point> points) {
    OptionalDouble no = OptionalDouble.empty();
    return new GrowthReadings(
        new TrialHead(
            "a.yaml", "growth", Optional.empty(), Optional.empty(), Optional.empty(), Map.of()),
        new IndicatorLimits(
            "indicator/dial", step, step, Optional.empty(), no, no, no, Optional.empty()),
        Optional.of("table"),
        OptionalDouble.of(0),
        points);
  }

  static Growth reduce(GrowthReadings readings) {
    return GrowthReduction.reduce(readings, new Draws(5, 1000), Work.sequential());
  }
}
