package rundlauf.reduce.growth;

import java.util.ArrayList;
import java.util.List;
import rundlauf.maths.Draws;
import rundlauf.maths.Work;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Drawn;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.readings.GrowthReadings;

/** Readings against time in, how far and how fast the nose grows out. */
public final class GrowthReduction {
  /** Time constants until less than 5 % are left: e⁻³ is 4.98 %; our choice. */
  private static final double SETTLED = 3.0;

  private GrowthReduction() {}

  /**
   * How a nose grows as its spindle warms: {@code y = y0 + G (1 − exp(−(t − t0)/τ))}, t0 the time
   * of the first reading, when the spindle is taken to have started, cold.
   *
   * @param readings times [s], readings of the dial [m], temperatures [°C] where they were read
   * @param draws count and seed
   * @param work asked now and then whether to go on
   * @return G [m], τ [s], 3 τ [s] and G over the rise of temperature [m/K] by draws: the posterior
   *     of readings rounded to the dial's step, joined by the dial's limits. Where the curve may
   *     not have begun to bend, τ is missing and G reaches from what was seen on, with a caution;
   *     where no growth is beyond doubt, G is what was seen
   * @see "docs/methods/growth.md"
   */
  public static Growth reduce(GrowthReadings readings, Draws draws, Work work) {
    work.check();
    GrowthFit fit = GrowthFit.of(readings, draws);
    boolean told = fit.timed() && fit.bent();
    String why = fit.timed() ? "growth-not-bent" : "growth-too-faint";
    return new Growth(
        readings.head(),
        readings,
        growth(fit),
        told ? fit.timeConstant(1, " time") : missing(why, "timeConstant"),
        told ? fit.timeConstant(SETTLED, " time") : missing(why, "settledAfter"),
        Warmth.perKelvin(readings, fit),
        fit.curve(),
        cautions(readings, fit),
        advice(readings, fit, told));
  }

  private static Figure growth(GrowthFit fit) {
    if (!fit.grew()) {
      return fit.seen();
    }
    return fit.bent() ? fit.total() : fit.atLeast();
  }

  private static Missing missing(String why, String about) {
    return new Missing(Unit.MINUTE, Saying.of(why, about));
  }

  private static List<Saying> cautions(GrowthReadings readings, GrowthFit fit) {
    List<Saying> cautions = new ArrayList<>();
    if (fit.grew() && !fit.bent()) {
      cautions.add(
          Saying.of("growth-still-rising", "growth", Arg.about(readings.span(), Unit.MINUTE)));
    }
    double before = readings.warmedBefore().orElse(0);
    if (before > 0) {
      cautions.add(Saying.of("growth-not-cold", "growth", Arg.about(before, Unit.MINUTE)));
    }
    return cautions;
  }

  private static List<Saying> advice(GrowthReadings readings, GrowthFit fit, boolean told) {
    List<Saying> advice = new ArrayList<>();
    if (told) {
      advice.addAll(warmUp(fit));
    }
    if (readings.warmedBefore().isEmpty()) {
      Arg start = Arg.of(readings.start(), Unit.MINUTE);
      advice.add(Saying.of("growth-start-taken", "growth", start));
    }
    if (readings.indicator().limitOfError().isEmpty()) {
      advice.add(Saying.of("side-load-dial-limit-unknown", "growth"));
    }
    readings.indicator().fromNorm().ifPresent(advice::add);
    if (readings.reference().isEmpty()) {
      advice.add(Saying.of("growth-no-reference", "growth"));
    }
    return advice;
  }

  private static List<Saying> warmUp(GrowthFit fit) {
    Drawn settled = fit.timeConstant(SETTLED, " time");
    Drawn left = fit.left();
    return List.of(
        Saying.of(
            "growth-warm-up",
            "settledAfter",
            up(settled.value(), 60, Unit.MINUTE),
            up(high(settled), 60, Unit.MINUTE)),
        Saying.of(
            "growth-left",
            "growth",
            up(left.value(), 1e-7, Unit.MICROMETRE),
            up(high(left), 1e-7, Unit.MICROMETRE)));
  }

  /** Rounded up to whole grains: to whole minutes, to tenths of a micrometre. */
  private static Arg up(double si, double grain, Unit unit) {
    return Arg.about(grain * Math.ceil(si / grain), unit);
  }

  private static double high(Drawn figure) {
    return figure.estimate().orElseThrow().interval().high();
  }
}
