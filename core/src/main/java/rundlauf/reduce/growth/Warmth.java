package rundlauf.reduce.growth;

import java.util.List;
import java.util.Optional;
import rundlauf.quantity.Cause;
import rundlauf.quantity.Drawn;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Measured;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.readings.GrowthReadings;
import rundlauf.readings.GrowthReadings.Point;

/**
 * The rise of temperature between the first reading that has one and the last.
 *
 * @param rise [K], with the rounding that its digits show
 */
record Warmth(Point first, Point last, Measured rise) {
  /** Steps that a thermometer may show [K], coarsest first; common practice, no source. */
  private static final List<Double> STEPS = List.of(1.0, 0.5, 0.1, 0.01);

  /** A rise of fewer steps than this tells no growth for each kelvin; our choice. */
  private static final double FEWEST_STEPS = 4;

  /** What converting decimals to binary leaves behind is under this share of a step. */
  private static final double NEAR = 1e-6;

  /** Empty where fewer than two readings have a temperature. */
  static Optional<Warmth> of(GrowthReadings readings) {
    List<Point> read = readings.points().stream().filter(p -> p.temperature().isPresent()).toList();
    if (read.size() < 2) {
      return Optional.empty();
    }
    Point first = read.get(0);
    Point last = read.get(read.size() - 1);
    double rise = last.temperature().orElseThrow() - first.temperature().orElseThrow();
    // Two roundings, each within half a step: u = step/√6 (JCGM 100:2008, F.2.2.1).
    Measured rounded =
        Measured.exact(rise, Unit.DEGREE_CELSIUS)
            .with(Cause.normal(readings.head().name(), "thermometer"), step(read) / Math.sqrt(6));
    return Optional.of(new Warmth(first, last, rounded));
  }

  private static double step(List<Point> read) {
    for (double step : STEPS) {
      if (read.stream()
          .mapToDouble(p -> p.temperature().orElseThrow() / step)
          .allMatch(x -> Math.abs(x - Math.rint(x)) < NEAR)) {
        return step;
      }
    }
    return 0;
  }

  /** Growth over rise of temperature. */
  static Figure perKelvin(GrowthReadings readings, GrowthFit fit) {
    Optional<Warmth> warmth = of(readings);
    if (warmth.isEmpty()) {
      return missing("growth-no-temperature");
    }
    Measured rise = warmth.get().rise();
    if (rise.value() < FEWEST_STEPS * Math.sqrt(6) * rise.u() || rise.value() <= 0) {
      return missing("growth-not-warmer");
    }
    Drawn growth = fit.between(warmth.get().first().time(), warmth.get().last().time());
    return Drawn.through(v -> v[0] / v[1], Unit.MICROMETRE_PER_KELVIN, fit.draws(), growth, rise);
  }

  private static Missing missing(String why) {
    return new Missing(Unit.MICROMETRE_PER_KELVIN, Saying.of(why, "perKelvin"));
  }
}
