package rundlauf.report;

import rundlauf.maths.Samples;
import rundlauf.maths.WeightedSamples;
import rundlauf.quantity.DrawnVector;
import rundlauf.quantity.Interval;

/**
 * The ellipse about a vector's mean, shaped as its draws spread, that holds 95 % of them.
 *
 * @param a first component of its points, the first again at the end
 * @param b second component
 */
record DoubtRegion(Samples a, Samples b) {
  /** Our choice: a point every 10 degrees draws smooth. */
  private static final int POINTS = 36;

  static DoubtRegion of(DrawnVector e) {
    double ma = e.a().mean();
    double mb = e.b().mean();
    double sa = e.a().standardDeviation();
    double sb = e.b().standardDeviation();
    double with = with(e, ma, mb, sa);
    double across = Math.sqrt(Math.max(0, sb * sb - with * with));
    double reach = reach(e, sa, with, across);
    return new DoubtRegion(
        Samples.generate(POINTS + 1, p -> ma + reach * sa * Math.cos(angle(p))),
        Samples.generate(
            POINTS + 1,
            p -> mb + reach * (with * Math.cos(angle(p)) + across * Math.sin(angle(p)))));
  }

  /** What of b goes with one standard deviation of a. */
  private static double with(DrawnVector e, double ma, double mb, double sa) {
    double sum = 0;
    for (int i = 0; i < e.count(); i++) {
      sum += (e.a().get(i) - ma) * (e.b().get(i) - mb);
    }
    return sa > 0 ? sum / (e.count() - 1) / sa : 0;
  }

  /** How many standard deviations far 95 % of the draws lie. */
  private static double reach(DrawnVector e, double sa, double with, double across) {
    double ma = e.a().mean();
    double mb = e.b().mean();
    Samples far =
        Samples.generate(
            e.count(),
            i -> {
              double x = sa > 0 ? (e.a().get(i) - ma) / sa : 0;
              double y = across > 0 ? (e.b().get(i) - mb - with * x) / across : 0;
              return Math.hypot(x, y);
            });
    return WeightedSamples.of(far).quantile(Interval.LEVEL);
  }

  private static double angle(int p) {
    return 2 * Math.PI * p / POINTS;
  }
}
