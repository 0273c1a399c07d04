package rundlauf.quantity;

import java.util.LinkedHashMap;
import java.util.Map;
import rundlauf.maths.Samples;
import rundlauf.maths.WeightedSamples;

/**
 * Magnitude and angle of a {@link DrawnVector}, taken last.
 *
 * <p>The prior is flat in the magnitude, not in the plane (which would hold large magnitudes
 * likelier than small ones): each draw weighs 1 / magnitude. The lower end is 0 wherever 0 cannot
 * be excluded; else the tails are equal.
 *
 * @see "docs/methods/coarse-scale.md"
 */
public final class Polar {
  /**
   * 0 counts as excluded when no more than this share of the draws lies farther from their mean
   * than 0 does. Our choice: half of what a 95 % interval would ask, since few readings make the
   * region's edge uncertain; it brings the coverage at a true 0 to 96 % and more (docs/quality.md).
   */
  private static final double EXCLUDED = 0.025;

  /**
   * What is left out at each end. Our choice, where equal tails of 95 % would have 2.5 %: with
   * those, some cells of eight positions held the truth in just under 93 % of the trials, since few
   * readings make their own scatter look small.
   */
  public static final double TAIL = 0.0175;

  /** Draws nearer to 0 than this share of the mean magnitude weigh no more than there. */
  private static final double NEAREST = 1e-3;

  private Polar() {}

  /**
   * Magnitude of the vector.
   *
   * @param vector with draws of a flat prior in the plane
   * @param unit to print in
   * @return median and 95 % interval, lower end 0 where 0 is not excluded; u the standard
   *     deviation; budget along the vector
   */
  public static Drawn magnitude(DrawnVector vector, Unit unit) {
    Samples magnitudes = magnitudes(vector);
    Samples weights = weights(magnitudes);
    var spread = WeightedSamples.of(magnitudes, weights);
    double low = zeroExcluded(vector) ? spread.quantile(TAIL) : 0;
    var interval = new Interval(low, spread.quantile(1 - TAIL), Interval.LEVEL);
    return Drawn.of(unit, magnitudes, weights, spread.quantile(0.5), interval, along(vector, 0));
  }

  /**
   * Direction of the vector.
   *
   * @return angle in [0, 2π) rad with its interval unwrapped, or missing where the magnitude's
   *     interval reaches 0
   */
  public static Figure angle(DrawnVector vector, String about) {
    if (!zeroExcluded(vector)) {
      return new Missing(Unit.DEGREE, Saying.of("direction-lost", about));
    }
    double middle = vector.direction();
    double turn = 2 * Math.PI;
    Samples off =
        Samples.generate(
            vector.count(),
            i ->
                Math.IEEEremainder(
                    Math.atan2(vector.b().get(i), vector.a().get(i)) - middle, turn));
    Samples weights = weights(magnitudes(vector));
    double median = WeightedSamples.of(off, weights).quantile(0.5);
    double wrapped = middle + median - turn * Math.floor((middle + median) / turn);
    Samples angles = off.map(x -> x - median + wrapped);
    Map<Cause, Double> across = along(vector, Math.PI / 2);
    double size = Math.hypot(vector.a().mean(), vector.b().mean());
    across.replaceAll((cause, effect) -> effect / size);
    var spread = WeightedSamples.of(angles, weights);
    var interval = new Interval(spread.quantile(TAIL), spread.quantile(1 - TAIL), Interval.LEVEL);
    return Drawn.of(Unit.DEGREE, angles, weights, wrapped, interval, across);
  }

  /**
   * Whether the draws exclude 0: too few of them lie farther from their mean, as their covariance
   * measures it.
   */
  public static boolean zeroExcluded(DrawnVector vector) {
    double ma = vector.a().mean();
    double mb = vector.b().mean();
    double aa = 0;
    double bb = 0;
    double ab = 0;
    int n = vector.count();
    for (int i = 0; i < n; i++) {
      double x = vector.a().get(i) - ma;
      double y = vector.b().get(i) - mb;
      aa += x * x;
      bb += y * y;
      ab += x * y;
    }
    if (aa == 0 && bb == 0) {
      return ma != 0 || mb != 0;
    }
    double zero = bb * ma * ma - 2 * ab * ma * mb + aa * mb * mb;
    int farther = 0;
    for (int i = 0; i < n; i++) {
      double x = vector.a().get(i) - ma;
      double y = vector.b().get(i) - mb;
      if (bb * x * x - 2 * ab * x * y + aa * y * y >= zero) {
        farther++;
      }
    }
    return farther <= EXCLUDED * n;
  }

  /** Of a prior flat in the magnitude: one weight a draw, not summing to 1. */
  public static Samples weights(DrawnVector vector) {
    return weights(magnitudes(vector));
  }

  private static Samples magnitudes(DrawnVector vector) {
    return Samples.generate(vector.count(), i -> Math.hypot(vector.a().get(i), vector.b().get(i)));
  }

  private static Samples weights(Samples magnitudes) {
    double least = NEAREST * magnitudes.mean();
    return least == 0 ? magnitudes.map(r -> 1) : magnitudes.map(r -> 1 / Math.max(r, least));
  }

  /**
   * The effects on the component that stands {@code turned} rad from the vector's own direction.
   */
  private static Map<Cause, Double> along(DrawnVector vector, double turned) {
    double direction = vector.direction() + turned;
    Map<Cause, Double> all = new LinkedHashMap<>();
    vector
        .effects()
        .forEach(
            (cause, e) ->
                all.put(cause, e.a() * Math.cos(direction) + e.b() * Math.sin(direction)));
    return all;
  }
}
