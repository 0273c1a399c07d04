package rundlauf.reduce.runout;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import rundlauf.maths.Draws;
import rundlauf.maths.Samples;
import rundlauf.quantity.Cause;
import rundlauf.quantity.Drawn;
import rundlauf.quantity.DrawnVector;
import rundlauf.quantity.DrawnVector.Effect;
import rundlauf.quantity.Polar;
import rundlauf.quantity.Unit;
import rundlauf.reduce.runout.Runout.NextClamping;

/**
 * What the next clamping will be: the mean over clampings with the scatter of one more put on it.
 */
final class NextClampingReduction {
  private NextClampingReduction() {}

  /**
   * The prediction.
   *
   * @param mean over the clampings
   * @param scatter between them
   * @param at the height it holds at [m]; empty when the readings name none
   * @return eccentricity and tir with prediction intervals, equal tails of the drawn magnitudes
   */
  static NextClamping reduce(
      DrawnVector mean, ClampingScatter scatter, String file, OptionalDouble at, Draws draws) {
    Cause cause = scatter.cause(file);
    var stream = draws.stream(cause.id());
    // The mean over c clampings is itself off by 1/√c of their scatter; an assumed scatter knows of
    // one clamping.
    double factor = Math.sqrt(1 + 1.0 / scatter.clampings());
    Samples a =
        Samples.generate(
            draws.count(),
            i -> mean.a().get(i) + factor * scatter.draws().get(i) * stream.gaussian());
    Samples b =
        Samples.generate(
            draws.count(),
            i -> mean.b().get(i) + factor * scatter.draws().get(i) * stream.gaussian());
    Drawn eccentricity = magnitude(mean, a, b, cause, factor * scatter.draws().mean());
    return new NextClamping(at, eccentricity, eccentricity.times(2));
  }

  private static Drawn magnitude(DrawnVector mean, Samples a, Samples b, Cause cause, double u) {
    double direction = mean.direction();
    Map<Cause, Double> effects = new LinkedHashMap<>();
    for (Map.Entry<Cause, Effect> e : mean.effects().entrySet()) {
      effects.put(
          e.getKey(),
          e.getValue().a() * Math.cos(direction) + e.getValue().b() * Math.sin(direction));
    }
    effects.put(cause, u);
    Samples sizes = Samples.generate(a.size(), i -> Math.hypot(a.get(i), b.get(i)));
    Drawn drawn = Drawn.of(Unit.MICROMETRE, sizes, effects);
    // Few clampings make the spread of a vector near 0 doubtful, and its magnitude cannot be said
    // to
    // stay off 0.
    return Polar.zeroExcluded(new DrawnVector(a, b, Map.of())) ? drawn : drawn.fromZero();
  }
}
