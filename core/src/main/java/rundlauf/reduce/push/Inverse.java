package rundlauf.reduce.push;

import java.util.LinkedHashMap;
import java.util.Map;
import rundlauf.maths.Draws;
import rundlauf.maths.Samples;
import rundlauf.maths.WeightedSamples;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Cause;
import rundlauf.quantity.Drawn;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Interval;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;

/** Figures that cannot be negative, and the stiffness of a compliance. */
public final class Inverse {
  private static final double TAIL = (1 - Interval.LEVEL) / 2;

  private Inverse() {}

  /**
   * A figure that is 0 or more, from draws that did not know it: what falls below counts as 0, and
   * the interval takes 0 in wherever 0 cannot be excluded. Its high end is never nearer to 0 than
   * one standard uncertainty: readings that would have it wholly negative say no more than small.
   */
  public static Drawn notNegative(Drawn figure, Draws draws) {
    Figure.Estimate free = figure.estimate().orElseThrow();
    Samples all = figure.draws(draws);
    if (all.min() >= 0) {
      return figure;
    }
    Samples even = Samples.generate(all.size(), k -> 1);
    var interval =
        new Interval(
            Math.max(0, free.interval().low()),
            Math.max(free.interval().high(), free.u()),
            Interval.LEVEL);
    double value = Math.max(0, free.value());
    return Drawn.of(
        figure.unit(), all.map(x -> Math.max(0, x)), even, value, interval, figure.effects());
  }

  /**
   * Stiffness [N/m] of a compliance [m/N].
   *
   * @param compliance by draws that may reach below 0
   * @param tooStiff code of the reason when they reach so far that the stiffness has no upper end;
   *     it names the lower end
   * @return the inverse with the ends of its interval inverted; the draws beyond the lower end of
   *     the compliance are held at half of that end, which moves no end of the interval
   */
  public static Figure of(Drawn compliance, String tooStiff, String about, Draws draws) {
    Samples all = compliance.draws(draws);
    var spread = WeightedSamples.of(all);
    double low = spread.quantile(TAIL);
    double high = spread.quantile(1 - TAIL);
    Unit unit = Unit.NEWTON_PER_MICROMETRE;
    if (low <= 0) {
      double most = Math.max(high, spread.standardDeviation());
      return new Missing(unit, Saying.of(tooStiff, about, Arg.of(1 / most, unit)));
    }
    double floor = Math.max(low / 2, spread.quantile(TAIL / 5));
    double value = compliance.value();
    Map<Cause, Double> effects = new LinkedHashMap<>();
    compliance.effects().forEach((cause, effect) -> effects.put(cause, -effect / (value * value)));
    return Drawn.of(
        unit,
        all.map(c -> 1 / Math.max(c, floor)),
        Samples.generate(all.size(), k -> 1),
        1 / value,
        new Interval(1 / high, 1 / low, Interval.LEVEL),
        effects);
  }
}
