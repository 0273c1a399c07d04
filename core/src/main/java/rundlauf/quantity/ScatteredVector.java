package rundlauf.quantity;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import rundlauf.maths.Draws;
import rundlauf.maths.Samples;
import rundlauf.maths.Stream;

/**
 * A vector with causes that push it as far in every direction, such as clamping anew.
 *
 * @param mean without them
 * @param drawn with them, draw by draw; its effects are those of {@code mean}
 * @param round for each such cause the sd of one component, SI
 */
public record ScatteredVector(DrawnVector mean, DrawnVector drawn, Map<Cause, Double> round) {
  public ScatteredVector {
    round = Collections.unmodifiableMap(new LinkedHashMap<>(round));
  }

  /** A vector without such causes. */
  public static ScatteredVector of(DrawnVector mean) {
    return new ScatteredVector(mean, mean, Map.of());
  }

  /**
   * The same pushed by one more cause.
   *
   * @param cause names the stream
   * @param sds sd of one component, draw by draw, SI
   */
  public ScatteredVector scattered(Cause cause, Samples sds, Draws draws) {
    Stream stream = draws.stream(cause.id());
    Samples a = pushed(drawn.a(), sds, stream);
    Samples b = pushed(drawn.b(), sds, stream);
    Map<Cause, Double> all = new LinkedHashMap<>(round);
    all.merge(cause, sds.mean(), Math::hypot);
    return new ScatteredVector(mean, new DrawnVector(a, b, drawn.effects()), all);
  }

  private static Samples pushed(Samples component, Samples sds, Stream stream) {
    return Samples.generate(
        component.size(), i -> component.get(i) + sds.get(i) * stream.gaussian());
  }

  /**
   * {@code this + factor · other}, draw by draw.
   *
   * @param other whose round causes are none of this vector's
   */
  public ScatteredVector plus(ScatteredVector other, double factor) {
    Map<Cause, Double> all = new LinkedHashMap<>(round);
    other.round.forEach((cause, sd) -> all.put(cause, Math.abs(factor) * sd));
    return new ScatteredVector(mean.plus(other.mean, factor), drawn.plus(other.drawn, factor), all);
  }

  /**
   * Its size, each draw for what it is: a prediction of the next one.
   *
   * @param unit to print in
   * @return median and equal tails of the drawn sizes; the lower end 0 where 0 is not excluded
   */
  public Drawn magnitude(Unit unit) {
    double direction = mean.direction();
    Map<Cause, Double> effects = new LinkedHashMap<>();
    mean.effects()
        .forEach(
            (cause, e) ->
                effects.put(cause, e.a() * Math.cos(direction) + e.b() * Math.sin(direction)));
    effects.putAll(round);
    Samples sizes =
        Samples.generate(drawn.count(), i -> Math.hypot(drawn.a().get(i), drawn.b().get(i)));
    Drawn size = Drawn.of(unit, sizes, effects);
    // Few clampings make the spread of a vector near 0 doubtful, and its magnitude cannot be said
    // to stay off 0.
    return Polar.zeroExcluded(drawn) ? size : size.fromZero();
  }
}
