package rundlauf.quantity;

import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import rundlauf.maths.Draws;
import rundlauf.maths.Samples;
import rundlauf.maths.WeightedSamples;

/**
 * A figure known by its draws, where first order will not do (JCGM 101:2008): near zero, or where
 * the readings are coarse. Draw i of every figure of one seed belongs to one state of the world, so
 * figures may be combined draw by draw.
 */
public final class Drawn implements Figure, Figure.Drawable {
  private final Unit unit;
  private final Samples draws;
  private final Samples weights;
  private final Estimate estimate;
  private final Map<Cause, Double> effects;

  private Drawn(
      Unit unit, Samples draws, Samples weights, Estimate estimate, Map<Cause, Double> effects) {
    this.unit = unit;
    this.draws = draws;
    this.weights = weights;
    this.estimate = estimate;
    this.effects = Collections.unmodifiableMap(new LinkedHashMap<>(effects));
  }

  /**
   * Median, standard deviation and equal tails of equally weighted draws.
   *
   * @param draws SI, finite
   * @param effects signed effect of 1 u of each cause to first order, SI: the budget
   */
  public static Drawn of(Unit unit, Samples draws, Map<Cause, Double> effects) {
    return of(unit, draws, even(draws.size()), effects);
  }

  /** As {@link #of(Unit, Samples, Map)} with a weight, not negative, on each draw. */
  public static Drawn of(Unit unit, Samples draws, Samples weights, Map<Cause, Double> effects) {
    var spread = WeightedSamples.of(draws, weights);
    double tail = (1 - Interval.LEVEL) / 2;
    var interval = new Interval(spread.quantile(tail), spread.quantile(1 - tail), Interval.LEVEL);
    return of(unit, draws, weights, spread.quantile(0.5), interval, effects);
  }

  /** With an interval and a value of the caller's own making; the interval must hold the value. */
  public static Drawn of(
      Unit unit,
      Samples draws,
      Samples weights,
      double value,
      Interval interval,
      Map<Cause, Double> effects) {
    if (!interval.holds(value)) {
      throw new IllegalArgumentException("value " + value + " is outside its interval " + interval);
    }
    double u = WeightedSamples.standardDeviation(draws, weights);
    return new Drawn(
        unit, draws, weights, new Estimate(value, u, interval, OptionalDouble.empty()), effects);
  }

  /**
   * A function of several figures, draw by draw; what they share cancels or adds by itself.
   *
   * @param f of the inputs' SI values
   * @param unit the result's unit
   * @param inputs figures of the same {@code draws}
   * @return median, standard deviation, equal tails; budget to first order by central differences
   *     over ±1 u
   */
  public static Drawn through(
      ToDoubleFunction<double[]> f, Unit unit, Draws draws, Figure... inputs) {
    Samples[] columns = new Samples[inputs.length];
    double[] at = new double[inputs.length];
    for (int i = 0; i < inputs.length; i++) {
      columns[i] = drawsOf(inputs[i], draws);
      at[i] = inputs[i].value();
    }
    Samples results =
        Samples.generate(
            draws.count(),
            k -> {
              double[] values = new double[columns.length];
              for (int i = 0; i < columns.length; i++) {
                values[i] = columns[i].get(k);
              }
              return f.applyAsDouble(values);
            });
    return of(unit, results, joint(draws, inputs), effectsThrough(f, at, inputs));
  }

  /** Weights of one set of readings count once, however many of its figures come in. */
  private static Samples joint(Draws draws, Figure... inputs) {
    return Arrays.stream(inputs)
        .filter(Drawn.class::isInstance)
        .map(figure -> ((Drawn) figure).weights)
        .distinct()
        .reduce(even(draws.count()), Drawn::product);
  }

  private static Map<Cause, Double> effectsThrough(
      ToDoubleFunction<double[]> f, double[] at, Figure... inputs) {
    Map<Cause, Double> all = new LinkedHashMap<>();
    for (int i = 0; i < inputs.length; i++) {
      double u = inputs[i].estimate().orElseThrow().u();
      if (u == 0) {
        continue;
      }
      double[] up = at.clone();
      double[] down = at.clone();
      up[i] += u;
      down[i] -= u;
      double slope = (f.applyAsDouble(up) - f.applyAsDouble(down)) / (2 * u);
      effectsOf(inputs[i])
          .forEach((cause, effect) -> all.merge(cause, slope * effect, Double::sum));
    }
    return all;
  }

  /** The signed effects by cause of a figure that has them. */
  public static Map<Cause, Double> effectsOf(Figure figure) {
    if (figure instanceof Measured m) {
      return m.effects();
    }
    return figure instanceof Drawn d ? d.effects : Map.of();
  }

  private static Samples drawsOf(Figure figure, Draws draws) {
    if (figure instanceof Figure.Drawable drawable) {
      return drawable.draws(draws);
    }
    throw new IllegalArgumentException("a missing figure has no draws");
  }

  private static Samples even(int n) {
    return Samples.generate(n, i -> 1.0 / n);
  }

  private static Samples product(Samples a, Samples b) {
    return Samples.generate(a.size(), i -> a.get(i) * b.get(i));
  }

  /**
   * The same with its interval reaching down to 0, for a magnitude that cannot be told from 0; its
   * value is not below 0.
   */
  public Drawn fromZero() {
    Interval i = estimate.interval();
    var interval = new Interval(0, i.high(), i.level());
    var widened = new Estimate(estimate.value(), estimate.u(), interval, estimate.dof());
    return new Drawn(unit, draws, weights, widened, effects);
  }

  /** The figure times a positive number. */
  public Drawn times(double factor) {
    if (!(factor > 0)) {
      throw new IllegalArgumentException("factor " + factor + " is not positive");
    }
    Map<Cause, Double> scaled = new LinkedHashMap<>();
    effects.forEach((cause, effect) -> scaled.put(cause, factor * effect));
    Interval i = estimate.interval();
    return new Drawn(
        unit,
        draws.map(x -> factor * x),
        weights,
        new Estimate(
            factor * estimate.value(),
            factor * estimate.u(),
            new Interval(factor * i.low(), factor * i.high(), i.level()),
            estimate.dof()),
        scaled);
  }

  /** Probability that the figure is over {@code limit} (SI). */
  public double probabilityOver(double limit) {
    return WeightedSamples.of(draws, weights).above(limit);
  }

  @Override
  public Unit unit() {
    return unit;
  }

  public Samples weights() {
    return weights;
  }

  /** Signed effect of one standard uncertainty of each cause to first order, SI. */
  public Map<Cause, Double> effects() {
    return effects;
  }

  @Override
  public Optional<Estimate> estimate() {
    return Optional.of(estimate);
  }

  @Override
  public List<Share> budget() {
    return Measured.shares(effects);
  }

  @Override
  public Samples draws(Draws asked) {
    if (asked.count() != draws.size()) {
      throw new IllegalArgumentException(
          asked.count() + " draws asked of a figure that has " + draws.size());
    }
    return draws;
  }
}
