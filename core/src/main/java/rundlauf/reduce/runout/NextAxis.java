package rundlauf.reduce.runout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rundlauf.maths.Draws;
import rundlauf.maths.Samples;
import rundlauf.quantity.DrawnVector;
import rundlauf.quantity.ScatteredVector;

/**
 * The shank's axis in the next clamping, at a height.
 *
 * @param offset E there; where the tilt is not known, at the height it was read at
 * @param tilt T, m/m; empty where one station cannot tell
 * @param scatterMeasured whether the scatter between clampings was measured; else it is assumed
 */
public record NextAxis(
    ScatteredVector offset, Optional<ScatteredVector> tilt, boolean scatterMeasured) {
  /** Sd of one component that is assumed with one clamping [m]. */
  public static final double ASSUMED_SCATTER = ClampingScatter.ASSUMED;

  /**
   * The axis at any height: that of each clamping is carried there, and mean and scatter are taken
   * last.
   *
   * @param runout with at least one sweep of angles
   * @param height above the nut's face [m]
   * @return empty where only swings were read
   * @see "docs/methods/character.md"
   */
  public static Optional<NextAxis> at(Runout runout, double height, Draws draws) {
    Clamped clamped = runout.nextClamping().clamped();
    return clamped.offsets().isEmpty()
        ? Optional.empty()
        : Optional.of(of(runout, carried(runout, height), draws));
  }

  private static List<DrawnVector> carried(Runout runout, double height) {
    Clamped clamped = runout.nextClamping().clamped();
    if (clamped.tilts().isEmpty()) {
      return clamped.offsets();
    }
    double far = height - runout.nextClamping().at().orElseThrow();
    List<DrawnVector> all = new ArrayList<>();
    for (int i = 0; i < clamped.offsets().size(); i++) {
      all.add(clamped.offsets().get(i).plus(clamped.tilts().get(i), far));
    }
    return all;
  }

  private static NextAxis of(Runout runout, List<DrawnVector> carried, Draws draws) {
    Clamped clamped = runout.nextClamping().clamped();
    String file = runout.head().name();
    List<DrawnVector> spread = clamped.stations().isEmpty() ? carried : clamped.stations();
    ClampingScatter scatter =
        clamped
            .scatter()
            .map(told -> told.of(carried.size()))
            .orElseGet(() -> ClampingScatter.of(spread, file, draws));
    return new NextAxis(
        next(AxisReduction.mean(carried), scatter, file, draws),
        clamped.tilts().isEmpty()
            ? Optional.empty()
            : Optional.of(tilt(clamped.tilts(), file + " tilt", draws)),
        scatter.measured());
  }

  /** One clamping tells no scatter of the tilt; that of the offset covers what it does. */
  private static ScatteredVector tilt(List<DrawnVector> tilts, String file, Draws draws) {
    DrawnVector mean = AxisReduction.mean(tilts);
    return tilts.size() < 2
        ? ScatteredVector.of(mean)
        : next(mean, ClampingScatter.of(tilts, file, draws), file, draws);
  }

  /** The mean with the scatter of one more clamping put on it. */
  static ScatteredVector next(DrawnVector mean, ClampingScatter scatter, String file, Draws draws) {
    // The mean over c clampings is itself off by 1/√c of their scatter; an assumed scatter knows of
    // one clamping.
    double factor = Math.sqrt(1 + 1.0 / scatter.clampings());
    Samples sds = scatter.draws().map(sd -> factor * sd);
    return ScatteredVector.of(mean).scattered(scatter.cause(file), sds, draws);
  }
}
