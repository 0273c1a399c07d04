package rundlauf.quantity;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import rundlauf.maths.Samples;

/**
 * A vector in the plane, such as E = a + i b, known by draws of its components; magnitude and angle
 * are taken last. The draws are those of a flat prior in the plane.
 *
 * @param a draws of the first component, SI
 * @param b as many of the second
 * @param effects by cause the effect of 1 u on (a, b), SI
 */
public record DrawnVector(Samples a, Samples b, Map<Cause, Effect> effects) {
  /** The effect of one standard uncertainty of a cause on the two components, SI. */
  public record Effect(double a, double b) {
    Effect plus(Effect other, double factor) {
      return new Effect(a + factor * other.a, b + factor * other.b);
    }
  }

  public DrawnVector {
    effects = Collections.unmodifiableMap(new LinkedHashMap<>(effects));
  }

  /** {@code this + factor · other}, draw by draw; effects of shared causes add. */
  public DrawnVector plus(DrawnVector other, double factor) {
    Map<Cause, Effect> all = new LinkedHashMap<>(effects);
    other.effects.forEach(
        (cause, effect) ->
            all.put(cause, all.getOrDefault(cause, new Effect(0, 0)).plus(effect, factor)));
    return new DrawnVector(
        Samples.generate(a.size(), i -> a.get(i) + factor * other.a.get(i)),
        Samples.generate(a.size(), i -> b.get(i) + factor * other.b.get(i)),
        all);
  }

  /** The vector times a number. */
  public DrawnVector times(double factor) {
    Map<Cause, Effect> all = new LinkedHashMap<>();
    effects.forEach((cause, e) -> all.put(cause, new Effect(factor * e.a, factor * e.b)));
    return new DrawnVector(a.map(x -> factor * x), b.map(x -> factor * x), all);
  }

  /** The vector times the complex number re + i im. */
  public DrawnVector times(double re, double im) {
    Map<Cause, Effect> all = new LinkedHashMap<>();
    effects.forEach(
        (cause, e) -> all.put(cause, new Effect(re * e.a - im * e.b, re * e.b + im * e.a)));
    return new DrawnVector(
        Samples.generate(a.size(), i -> re * a.get(i) - im * b.get(i)),
        Samples.generate(a.size(), i -> re * b.get(i) + im * a.get(i)),
        all);
  }

  /** How many draws there are. */
  public int count() {
    return a.size();
  }

  /** The direction of the mean, rad. */
  public double direction() {
    return Math.atan2(b.mean(), a.mean());
  }

  /**
   * The vector moved, draw by draw, by a cause of effect {@code e} whose standard draws are given.
   */
  public DrawnVector moved(Cause cause, Effect e, Samples standard) {
    Map<Cause, Effect> one = new LinkedHashMap<>();
    one.put(cause, e);
    return plus(new DrawnVector(standard.map(x -> e.a * x), standard.map(x -> e.b * x), one), 1);
  }
}
