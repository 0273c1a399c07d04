package rundlauf.reduce.push;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rundlauf.maths.Draws;
import rundlauf.maths.Samples;
import rundlauf.maths.WeightedSamples;
import rundlauf.quantity.Cause;
import rundlauf.quantity.Drawn;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Measured;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.readings.IndicatorLimits;
import rundlauf.readings.LoadReadings;
import rundlauf.readings.LoadReadings.Point;

/** Figures of the fitted lines: the scatter's draws, joined by what all readings share. */
public record LoadFigures(LoadReadings readings, LoadLines lines, LoadFit fit, Draws draws) {

  /** Deflection over true force [m/N]; may reach below 0. */
  public Drawn compliance() {
    Drawn slope = own("", fit.coefficients().get(lines.slopeColumn()), Unit.MICROMETRE_PER_NEWTON);
    return Drawn.through(
        v -> (v[0] + v[1] + v[4]) / v[2] * v[3],
        Unit.MICROMETRE_PER_NEWTON,
        draws,
        slope,
        dialOverForce(),
        readings.forceScale(),
        readings.indicator().scale(),
        stand());
  }

  /** The dial's stand may have given way as much as when it was pushed, this way or that. */
  private Measured stand() {
    Measured none = Measured.exact(0, Unit.MICROMETRE_PER_NEWTON);
    return readings
        .stand()
        .map(s -> none.with(Cause.rectangular(s.record(), "stand"), s.give() / Math.sqrt(3)))
        .orElse(none);
  }

  /** What the dial's limit of error does to the slope: over the loads of the longest side. */
  private Measured dialOverForce() {
    double span = 0;
    double forces = 0;
    for (List<Point> side : lines.secant() ? List.of(lines.rows()) : lines.sides()) {
      double reach = reach(Samples.generate(side.size(), i -> LoadLines.along(side.get(i))));
      if (reach > forces) {
        forces = reach;
        span = reach(Samples.generate(side.size(), i -> side.get(i).reading()));
      }
    }
    return dial(span, "slope", forces);
  }

  /** A difference of readings over {@code span} is off by the dial's limit at most. */
  private Measured dial(double span, String of, double over) {
    return readings.indicator().error(readings.head().name() + " " + of, span, over);
  }

  /** What retrace adds to a difference of readings reached from opposite sides. */
  private Measured retrace(String of) {
    Measured none = Measured.exact(0, Unit.MICROMETRE);
    IndicatorLimits dial = readings.indicator();
    String record = readings.head().name() + " " + of;
    return dial.hysteresis().isPresent()
        ? none.with(
            Cause.rectangular(record, "retrace"), dial.hysteresis().getAsDouble() / Math.sqrt(3))
        : none;
  }

  /** The gap between the intercepts of opposite pushes, or what one side tells of it. */
  public Figure play() {
    if (lines.play()) {
      Drawn gap = own(" play", fit.coefficients().get(lines.playColumn()), Unit.MICROMETRE);
      return difference(gap, "play");
    }
    String why =
        lines.secant()
            ? "side-load-play-needs-loads"
            : lines.unloaded().isEmpty() ? "side-load-play-one-sided" : "";
    return why.isEmpty()
        ? difference(bound(), "play")
        : new Missing(Unit.MICROMETRE, Saying.of(why, "play"));
  }

  /** Whether {@link #play} is only the least that the play can be. */
  public boolean playIsLowerBound() {
    return !lines.play() && !lines.secant() && !lines.unloaded().isEmpty();
  }

  /** Intercept of the first side that has unloaded readings, less their mean, along the push. */
  private Drawn bound() {
    int zeroing = lines.unloaded().get(0).zeroed();
    List<Point> rest = lines.unloaded().stream().filter(p -> p.zeroed() == zeroing).toList();
    double sign =
        lines.loaded().stream()
            .filter(p -> p.zeroed() == zeroing)
            .findFirst()
            .map(LoadLines::sign)
            .orElseThrow();
    double mean = rest.stream().mapToDouble(Point::reading).sum() / rest.size();
    var stream = draws.stream(readings.head().name() + "/unloaded");
    double step = readings.indicator().readTo();
    Samples offsets = fit.coefficients().get(lines.zeroings().indexOf(zeroing));
    Samples all =
        Samples.generate(
            draws.count(),
            k -> {
              double rounding = step * (stream.uniform() - 0.5);
              double scatter = fit.sigma().get(k) * stream.gaussian() / Math.sqrt(rest.size());
              return sign * (offsets.get(k) - mean + rounding + scatter);
            });
    return own(" play", all, Unit.MICROMETRE);
  }

  /** How far falling and rising loads lie apart at equal load. */
  public Figure loop() {
    if (!lines.loop()) {
      return new Missing(Unit.MICROMETRE, Saying.of("side-load-no-branches", "hysteresis"));
    }
    Samples shift = fit.coefficients().get(lines.loopColumn());
    return difference(own(" loop", shift, Unit.MICROMETRE), "loop");
  }

  private Drawn difference(Drawn found, String of) {
    double span = reach(lines.readings());
    Drawn whole =
        Drawn.through(
            v -> (v[0] + v[1] + v[2]) * v[3],
            Unit.MICROMETRE,
            draws,
            found,
            of.equals("loop") ? Measured.exact(0, Unit.MICROMETRE) : dial(span, of, 1),
            retrace(of),
            readings.indicator().scale());
    return Inverse.notNegative(whole, draws);
  }

  /** Draws that come of this trial's readings alone. */
  private Drawn own(String of, Samples all, Unit unit) {
    double u = WeightedSamples.of(all).standardDeviation();
    Map<Cause, Double> effects = new LinkedHashMap<>();
    effects.put(Cause.normal(readings.head().name() + of, "scatter"), u);
    return Drawn.of(unit, all, effects);
  }

  private static double reach(Samples values) {
    return values.size() == 0 ? 0 : values.max() - values.min();
  }
}
