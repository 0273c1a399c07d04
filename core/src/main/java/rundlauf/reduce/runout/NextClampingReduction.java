package rundlauf.reduce.runout;

import java.util.List;
import java.util.OptionalDouble;
import rundlauf.maths.Draws;
import rundlauf.quantity.Drawn;
import rundlauf.quantity.DrawnVector;
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
   * @param clamped the clampings themselves
   * @return eccentricity and tir with prediction intervals, equal tails of the drawn magnitudes
   */
  static NextClamping reduce(
      DrawnVector mean,
      ClampingScatter scatter,
      String file,
      OptionalDouble at,
      Clamped clamped,
      Draws draws) {
    Drawn eccentricity = NextAxis.next(mean, scatter, file, draws).magnitude(Unit.MICROMETRE);
    boolean others = scatter.dof() > 2 * (scatter.clampings() - 1);
    return new NextClamping(
        at, eccentricity, eccentricity.times(2), others ? clamped.withScatter(scatter) : clamped);
  }

  /**
   * The clampings that bear an axis, at a height [m]; the others tell of the scatter where they are
   * more.
   */
  static Clamped clamped(List<AxisFit> fits, double at, List<DrawnVector> stations) {
    return new Clamped(
        fits.stream().map(fit -> fit.at(at)).toList(),
        fits.stream().map(AxisFit::tilt).toList(),
        fits.size() >= stations.size() ? List.of() : stations);
  }
}
