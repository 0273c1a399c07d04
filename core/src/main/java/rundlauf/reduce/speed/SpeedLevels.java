package rundlauf.reduce.speed;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import rundlauf.maths.Draws;
import rundlauf.maths.LeastSquares;
import rundlauf.maths.Samples;
import rundlauf.quantity.Cause;
import rundlauf.quantity.Measured;
import rundlauf.quantity.Unit;
import rundlauf.readings.SpeedReadings;
import rundlauf.readings.SpeedReadings.Point;

/**
 * Readings gathered by setting: the idle speed of every setting that turned, with its doubt.
 *
 * @param levels by rising setting
 * @param droop turns per second lost per watt over idle, where the readings bear it
 * @param scatter pooled sd of a reading about its level [1/s]; empty without repeats
 * @param step what the readings' digits show them rounded to [1/s]; empty where they show nothing
 */
record SpeedLevels(
    List<Level> levels, Optional<Measured> droop, OptionalDouble scatter, OptionalDouble step) {

  /** One setting: the speed there, and the number of readings behind it. */
  record Level(double setting, Measured speed, int readings) {
    /**
     * The speed, draw by draw. All levels lean on one pooled scatter, so where they come together
     * its doubt is one factor and not one for each.
     *
     * @param factors draws of the true scatter over its estimate
     */
    Samples draws(Draws draws, Samples factors) {
      double[] sums = new double[draws.count()];
      Arrays.fill(sums, speed.value());
      speed
          .effects()
          .forEach(
              (cause, effect) -> {
                boolean scatter = cause.shape() instanceof Cause.Shape.Student;
                Samples standard =
                    scatter
                        ? draws.stream(cause.id() + " normal").gaussians(draws.count())
                        : cause.draws(draws);
                for (int k = 0; k < sums.length; k++) {
                  sums[k] += effect * standard.get(k) * (scatter ? factors.get(k) : 1);
                }
              });
      return Samples.of(sums);
    }
  }

  /** A load step counts as one from this share over the idle power; our choice. */
  private static final double LOADED = 0.2;

  /** What speeds are rounded to by eye or display, coarsest first; our choice. */
  private static final double[] STEPS_RPM = {100, 10, 1, 0.1};

  static SpeedLevels of(SpeedReadings readings) {
    List<Point> turning = readings.points().stream().filter(p -> p.speed() > 0).toList();
    Map<Double, Double> idle = idlePowers(turning);
    boolean drooped = loaded(turning, idle);
    List<Double> settings = new ArrayList<>(idle.keySet());
    LeastSquares fit = fit(turning, idle, settings, drooped);
    OptionalDouble scatter =
        fit.dof() > 0 ? OptionalDouble.of(fit.residualSd()) : OptionalDouble.empty();
    OptionalDouble step = step(turning);
    List<Level> levels = new ArrayList<>();
    for (int i = 0; i < settings.size(); i++) {
      double setting = settings.get(i);
      String record = readings.head().name() + " setting " + setting;
      Measured speed = figure(fit, i, record, Unit.RPM, step);
      int count = (int) turning.stream().filter(p -> p.setting() == setting).count();
      levels.add(new Level(setting, speed, count));
    }
    Optional<Measured> droop =
        drooped
            ? Optional.of(droop(fit, settings.size(), readings.head().name(), step))
            : Optional.empty();
    return new SpeedLevels(levels, droop, scatter, step);
  }

  /** The least power at every setting that turned, by rising setting; 0 where none was read. */
  private static Map<Double, Double> idlePowers(List<Point> turning) {
    Map<Double, Double> sorted = new TreeMap<>();
    for (Point p : turning) {
      sorted.merge(p.setting(), p.power().orElse(Double.POSITIVE_INFINITY), Math::min);
    }
    Map<Double, Double> idle = new LinkedHashMap<>();
    sorted.forEach((setting, power) -> idle.put(setting, Double.isInfinite(power) ? 0 : power));
    return idle;
  }

  private static boolean loaded(List<Point> turning, Map<Double, Double> idle) {
    return turning.stream()
        .anyMatch(p -> over(p, idle) > LOADED * idle.getOrDefault(p.setting(), 0.0));
  }

  private static double over(Point p, Map<Double, Double> idle) {
    double least = idle.getOrDefault(p.setting(), 0.0);
    return p.power().isPresent() ? p.power().getAsDouble() - least : 0;
  }

  /** speed = level of its setting − droop · (power − idle power). */
  private static LeastSquares fit(
      List<Point> turning, Map<Double, Double> idle, List<Double> settings, boolean drooped) {
    double[][] rows = new double[turning.size()][settings.size() + (drooped ? 1 : 0)];
    for (int i = 0; i < rows.length; i++) {
      rows[i][settings.indexOf(turning.get(i).setting())] = 1;
      if (drooped) {
        rows[i][settings.size()] = -over(turning.get(i), idle);
      }
    }
    return LeastSquares.fit(rows, Samples.generate(rows.length, i -> turning.get(i).speed()));
  }

  private static Measured figure(
      LeastSquares fit, int i, String record, Unit unit, OptionalDouble step) {
    Measured figure = Measured.exact(fit.coefficients().get(i), unit);
    if (fit.dof() > 0 && fit.residualSd() > 0) {
      figure = figure.with(Cause.scatter(record, "scatter", fit.dof()), fit.u(i));
    }
    return step.isPresent()
        ? figure.with(Cause.rectangular(record, "rounding"), step.getAsDouble() / Math.sqrt(12))
        : figure;
  }

  /** The rounding of the speeds reaches the slope as if every reading were off by its own. */
  private static Measured droop(LeastSquares fit, int column, String file, OptionalDouble step) {
    String record = file + " droop";
    Measured droop = figure(fit, column, record, Unit.RPM_PER_WATT, OptionalDouble.empty());
    double lever = Math.sqrt(fit.unscaled(column, column));
    return step.isPresent()
        ? droop.with(Cause.normal(record, "rounding"), step.getAsDouble() / Math.sqrt(12) * lever)
        : droop;
  }

  private static OptionalDouble step(List<Point> turning) {
    for (double step : STEPS_RPM) {
      boolean all =
          turning.stream()
              .mapToDouble(p -> Unit.RPM.fromSi(p.speed()) / step)
              .allMatch(x -> Math.abs(x - Math.rint(x)) < 1e-6);
      if (all) {
        return OptionalDouble.of(Unit.RPM.toSi(step));
      }
    }
    return OptionalDouble.empty();
  }
}
