package rundlauf.quantity;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import rundlauf.maths.Distributions;
import rundlauf.maths.Draws;
import rundlauf.maths.Samples;

/**
 * A figure as a linear function of independent causes: a value and the signed effect of one
 * standard uncertainty of each cause. Effects of one cause add, effects of different causes combine
 * in quadrature (JCGM 100:2008, 5.1.2), degrees of freedom by Welch–Satterthwaite (G.4.1). Results
 * that share a cause are correlated by themselves.
 */
public final class Measured implements Figure, Figure.Drawable {
  private final double value;
  private final Unit unit;
  private final Map<Cause, Double> effects;
  private final double floor;

  private Measured(double value, Unit unit, Map<Cause, Double> effects, double floor) {
    this.value = value;
    this.unit = unit;
    this.effects = Collections.unmodifiableMap(effects);
    this.floor = floor;
  }

  private Measured(double value, Unit unit, Map<Cause, Double> effects) {
    this(value, unit, effects, Double.NEGATIVE_INFINITY);
  }

  /**
   * The same with no interval reaching below {@code limit} (SI), which the quantity cannot pass; at
   * most the value.
   */
  public Measured notBelow(double limit) {
    if (value < limit) {
      throw new IllegalArgumentException("value " + value + " is below its floor " + limit);
    }
    return new Measured(value, unit, effects, limit);
  }

  /** A value without doubt; {@code value} in SI. */
  public static Measured exact(double value, Unit unit) {
    return new Measured(value, unit, Map.of());
  }

  /** The same with the effect [SI] of one standard uncertainty of {@code cause} added. */
  public Measured with(Cause cause, double effect) {
    Map<Cause, Double> all = new LinkedHashMap<>(effects);
    all.merge(cause, effect, Double::sum);
    return new Measured(value, unit, all, floor);
  }

  public Measured plus(Measured other) {
    return through(v -> v[0] + v[1], unit, this, other);
  }

  public Measured minus(Measured other) {
    return through(v -> v[0] - v[1], unit, this, other);
  }

  /**
   * A function of measured figures, to first order, with derivatives by central differences over ±1
   * u of each input (JCGM 100:2008, 5.1.3 note 2).
   *
   * @param f of the inputs' SI values
   * @param unit the result's unit
   * @param inputs in the order {@code f} takes them
   * @return the result with the effects of every cause of every input
   */
  public static Measured through(ToDoubleFunction<double[]> f, Unit unit, Measured... inputs) {
    double[] at = new double[inputs.length];
    for (int i = 0; i < at.length; i++) {
      at[i] = inputs[i].value;
    }
    Map<Cause, Double> all = new LinkedHashMap<>();
    for (int i = 0; i < at.length; i++) {
      double u = inputs[i].u();
      if (u == 0) {
        continue;
      }
      double slope = (moved(f, at, i, u) - moved(f, at, i, -u)) / (2 * u);
      inputs[i].effects.forEach((cause, effect) -> all.merge(cause, slope * effect, Double::sum));
    }
    return new Measured(f.applyAsDouble(at), unit, all);
  }

  private static double moved(ToDoubleFunction<double[]> f, double[] at, int i, double by) {
    double[] there = at.clone();
    there[i] += by;
    return f.applyAsDouble(there);
  }

  @Override
  public Unit unit() {
    return unit;
  }

  @Override
  public double value() {
    return value;
  }

  /** Signed effect of one standard uncertainty of each cause, SI. */
  public Map<Cause, Double> effects() {
    return effects;
  }

  /** Combined standard uncertainty, SI. */
  public double u() {
    double squares = 0;
    for (double effect : effects.values()) {
      squares += effect * effect;
    }
    return Math.sqrt(squares);
  }

  /** Covariance with another figure, from the causes they share; SI. */
  public double covariance(Measured other) {
    double sum = 0;
    for (var e : effects.entrySet()) {
      sum += e.getValue() * other.effects.getOrDefault(e.getKey(), 0.0);
    }
    return sum;
  }

  /** Effective degrees of freedom (JCGM 100:2008, G.2b); infinite when no cause has finite ones. */
  public double dof() {
    double fourth = 0;
    for (var e : effects.entrySet()) {
      fourth += Math.pow(e.getValue(), 4) / e.getKey().dof();
    }
    return fourth == 0 ? Double.POSITIVE_INFINITY : Math.pow(u(), 4) / fourth;
  }

  /** Interval value ± k u with Student's k on the effective degrees of freedom. */
  public Interval interval(double level) {
    double half = u() == 0 ? 0 : Distributions.coverageFactor(level, dof()) * u();
    return new Interval(Math.max(floor, value - half), value + half, level);
  }

  @Override
  public Optional<Estimate> estimate() {
    double dof = dof();
    OptionalDouble finite = Double.isFinite(dof) ? OptionalDouble.of(dof) : OptionalDouble.empty();
    return Optional.of(new Estimate(value, u(), interval(Interval.LEVEL), finite));
  }

  @Override
  public List<Share> budget() {
    return shares(effects);
  }

  /** Effects by cause as a budget, largest first. */
  static List<Share> shares(Map<Cause, Double> effects) {
    List<Share> shares = new ArrayList<>();
    effects.forEach((cause, effect) -> shares.add(new Share(cause, Math.abs(effect))));
    shares.sort(Comparator.comparingDouble(Share::u).reversed());
    return shares;
  }

  @Override
  public Samples draws(Draws draws) {
    double[] sums = new double[draws.count()];
    Arrays.fill(sums, value);
    effects.forEach(
        (cause, effect) -> {
          Samples standard = cause.draws(draws);
          for (int i = 0; i < sums.length; i++) {
            sums[i] += effect * standard.get(i);
          }
        });
    return Samples.of(sums);
  }
}
