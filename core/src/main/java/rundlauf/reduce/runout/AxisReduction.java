package rundlauf.reduce.runout;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rundlauf.maths.Draws;
import rundlauf.quantity.Cause;
import rundlauf.quantity.DrawnVector;
import rundlauf.quantity.DrawnVector.Effect;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Polar;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.readings.RunoutReadings;
import rundlauf.reduce.runout.Runout.Axis;
import rundlauf.reduce.runout.Runout.Tip;

/**
 * Tilt, and the shank's axis at the height of the cutting edges, as the mean over the clampings.
 */
final class AxisReduction {
  private AxisReduction() {}

  /**
   * The axis.
   *
   * @param fits one for each clamping whose stations bear one; empty when none does
   */
  static Axis reduce(RunoutReadings trial, List<AxisFit> fits, Draws draws) {
    OptionalDouble height =
        trial.tip().map(t -> OptionalDouble.of(t.si())).orElse(OptionalDouble.empty());
    if (fits.isEmpty()) {
      Saying why = Saying.of("one-station-only", "axis");
      return new Axis(
          new Missing(Unit.MICROMETRE_PER_MILLIMETRE, why),
          new Missing(Unit.DEGREE, why),
          missingTip(height, why));
    }
    DrawnVector tilt = mean(fits.stream().map(AxisFit::tilt).toList());
    return new Axis(
        Polar.magnitude(tilt, Unit.MICROMETRE_PER_MILLIMETRE),
        Polar.angle(tilt, "axis.tiltHighSpot"),
        atTip(trial, fits, draws)
            .map(e -> tip(height, e))
            .orElseGet(() -> missingTip(height, Saying.of("tip-height-not-given", "axis.tip"))));
  }

  /**
   * The mean axis at the height of the edges with the doubt of that height; empty when the height
   * is not given.
   */
  static Optional<DrawnVector> atTip(RunoutReadings trial, List<AxisFit> fits, Draws draws) {
    return trial.tip().map(height -> atHeight(trial, fits, height, draws));
  }

  private static DrawnVector atHeight(
      RunoutReadings trial, List<AxisFit> fits, Quantity height, Draws draws) {
    DrawnVector mean = mean(fits.stream().map(f -> f.at(height.si())).toList());
    if (!height.hasLimits()) {
      return mean;
    }
    DrawnVector tilt = mean(fits.stream().map(AxisFit::tilt).toList());
    Cause cause = Cause.rectangular(trial.head().name(), "tip-height");
    Effect effect = new Effect(tilt.a().mean() * height.u(), tilt.b().mean() * height.u());
    return mean.moved(cause, effect, cause.draws(draws));
  }

  static DrawnVector mean(List<DrawnVector> vectors) {
    DrawnVector sum = vectors.get(0).times(1.0 / vectors.size());
    for (int i = 1; i < vectors.size(); i++) {
      sum = sum.plus(vectors.get(i), 1.0 / vectors.size());
    }
    return sum;
  }

  private static Tip tip(OptionalDouble height, DrawnVector e) {
    var eccentricity = Polar.magnitude(e, Unit.MICROMETRE);
    return new Tip(
        height, eccentricity.times(2), eccentricity, Polar.angle(e, "axis.tip.highSpot"));
  }

  private static Tip missingTip(OptionalDouble height, Saying why) {
    return new Tip(
        height,
        new Missing(Unit.MICROMETRE, why),
        new Missing(Unit.MICROMETRE, why),
        new Missing(Unit.DEGREE, why));
  }
}
