package rundlauf.reduce.runout;

import java.util.List;
import java.util.Map;
import rundlauf.maths.Distributions;
import rundlauf.maths.Draws;
import rundlauf.maths.Samples;
import rundlauf.maths.WeightedSamples;
import rundlauf.quantity.Cause;
import rundlauf.quantity.Drawn;
import rundlauf.quantity.DrawnVector;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Interval;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;

/**
 * How much E differs from clamping to clamping: the sd of one component.
 *
 * @param draws of that sd [m]
 * @param high upper end of its interval [m]
 * @param dof that it is told by; 0: it is assumed
 * @param clampings how many of them the mean is taken over
 */
public record ClampingScatter(Samples draws, double high, int dof, int clampings) {
  private static final double TAIL = (1 - Interval.LEVEL) / 2;

  /**
   * Assumed with one clamping: as if the whole runout that ISO 15488 Table 4 permits a class 2
   * collet of up to 10 mm (15 µm, as quoted on a collet maker's technical page) came anew with each
   * clamping. Half of it is the mean of a Rayleigh distribution, whose sd of a component is mean /
   * √(π/2).
   */
  static final double ASSUMED = 15e-6 / 2 / Math.sqrt(Math.PI / 2);

  /**
   * From the vectors of the clampings at one height: the spread of their means, by χ² on 2 (c − 1)
   * degrees of freedom, less the variance that their measurement explains.
   *
   * @param vectors one a clamping, at least one
   * @param file names the stream
   */
  static ClampingScatter of(List<DrawnVector> vectors, String file, Draws draws) {
    int c = vectors.size();
    if (c < 2) {
      return assumed(c, draws);
    }
    var mean = AxisReduction.mean(vectors);
    return left(vectors.stream().map(v -> v.plus(mean, -1)).toList(), c - 1, file, draws);
  }

  /**
   * From what a fit over the clampings leaves of their vectors.
   *
   * @param residuals one a clamping
   * @param spare clampings more than the fit needs; 0: the scatter is assumed
   */
  static ClampingScatter left(List<DrawnVector> residuals, int spare, String file, Draws draws) {
    int c = residuals.size();
    if (spare == 0) {
      return assumed(c, draws);
    }
    double between = 0;
    double within = 0;
    for (var off : residuals) {
      between += Math.pow(off.a().mean(), 2) + Math.pow(off.b().mean(), 2);
      within += Math.pow(off.a().standardDeviation(), 2) + Math.pow(off.b().standardDeviation(), 2);
    }
    int dof = 2 * spare;
    double explained = within / dof;
    double spread = between;
    var stream = draws.stream(file + "/clamping-scatter-sd");
    Samples sds =
        Samples.generate(
            draws.count(), i -> Math.sqrt(Math.max(0, spread / stream.chiSquare(dof) - explained)));
    return new ClampingScatter(sds, high(spread, explained, dof), dof, c);
  }

  private static ClampingScatter assumed(int clampings, Draws draws) {
    return new ClampingScatter(
        Samples.generate(draws.count(), i -> ASSUMED), ASSUMED, 0, clampings);
  }

  /**
   * Upper end, given that the whole variance is no less than what the measurement explains: vectors
   * that happen to lie together say no more than small.
   */
  private static double high(double spread, double explained, int dof) {
    double most = explained == 0 ? Double.POSITIVE_INFINITY : spread / explained;
    double chiSquare = Distributions.chiSquareQuantile(TAIL, dof, most);
    return Math.sqrt(Math.max(0, spread / chiSquare - explained));
  }

  /** Whether it comes from clampings. */
  boolean measured() {
    return dof > 0;
  }

  /** The same, of a mean over so many clampings. */
  ClampingScatter of(int more) {
    return new ClampingScatter(draws, high, dof, more);
  }

  /** As a figure: missing when it is only assumed. */
  Figure figure() {
    return measured()
        ? estimate()
        : new Missing(
            Unit.MICROMETRE,
            Saying.of(clampings == 0 ? "swing-only" : "one-clamping-only", "clampingScatter"));
  }

  private Drawn estimate() {
    var spread = WeightedSamples.of(draws);
    double value = spread.quantile(0.5);
    var interval = new Interval(spread.quantile(TAIL), Math.max(high, value), Interval.LEVEL);
    Samples even = Samples.generate(draws.size(), i -> 1);
    return Drawn.of(Unit.MICROMETRE, draws, even, value, interval, Map.of());
  }

  /** The cause that the next clamping is. */
  Cause cause(String file) {
    return Cause.normal(file, measured() ? "clamping" : "clamping-assumed");
  }
}
