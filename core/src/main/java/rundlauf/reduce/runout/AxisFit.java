package rundlauf.reduce.runout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntToDoubleFunction;
import rundlauf.maths.Distributions;
import rundlauf.maths.Samples;
import rundlauf.quantity.DrawnVector;
import rundlauf.reduce.runout.Runout.Station;

/**
 * The straight axis {@code E(z) = E0 + T z} of one clamping: weighted least squares over its
 * stations, the weights the same for both components. Linear in the stations' vectors, so that what
 * they share (the dial) adds or cancels by itself.
 *
 * @param heights of the stations [m]
 * @param vectors of the stations
 * @param weights 1 / variance of a component
 */
record AxisFit(Samples heights, List<DrawnVector> vectors, Samples weights) {

  /** From the stations of one clamping; two heights or more. */
  static AxisFit of(List<Station> stations) {
    List<DrawnVector> vectors = stations.stream().map(s -> s.vector().orElseThrow()).toList();
    Samples heights =
        Samples.generate(stations.size(), i -> stations.get(i).sweep().station().orElseThrow());
    Samples weights =
        Samples.generate(
            vectors.size(),
            i ->
                2
                    / (Math.pow(vectors.get(i).a().standardDeviation(), 2)
                        + Math.pow(vectors.get(i).b().standardDeviation(), 2)));
    return new AxisFit(heights, vectors, weights);
  }

  /** Whether the stations stand at two heights or more. */
  static boolean possible(List<Station> stations) {
    return stations.stream()
            .filter(s -> s.vector().isPresent() && s.sweep().station().isPresent())
            .mapToDouble(s -> s.sweep().station().getAsDouble())
            .distinct()
            .count()
        >= 2;
  }

  /** The axis at {@code height} m. */
  DrawnVector at(double height) {
    double off = height - middle();
    return combined(
        i -> weights.get(i) / weights.sum() + off * weights.get(i) * lever(i) / moment());
  }

  /** T, m/m. */
  DrawnVector tilt() {
    return combined(i -> weights.get(i) * lever(i) / moment());
  }

  /** Probability of so bad a fit if the axis is straight; 1 with two stations. */
  double straightness() {
    if (vectors.size() < 3) {
      return 1;
    }
    double chiSquare = 0;
    for (int i = 0; i < vectors.size(); i++) {
      DrawnVector fitted = at(heights.get(i));
      double a = vectors.get(i).a().mean() - fitted.a().mean();
      double b = vectors.get(i).b().mean() - fitted.b().mean();
      chiSquare += weights.get(i) * (a * a + b * b);
    }
    return Distributions.chiSquareTail(chiSquare, 2.0 * (vectors.size() - 2));
  }

  private DrawnVector combined(IntToDoubleFunction share) {
    DrawnVector sum = vectors.get(0).times(share.applyAsDouble(0));
    for (int i = 1; i < vectors.size(); i++) {
      sum = sum.plus(vectors.get(i), share.applyAsDouble(i));
    }
    return sum;
  }

  private double middle() {
    double sum = 0;
    for (int i = 0; i < heights.size(); i++) {
      sum += weights.get(i) * heights.get(i);
    }
    return sum / weights.sum();
  }

  private double lever(int i) {
    return heights.get(i) - middle();
  }

  private double moment() {
    double sum = 0;
    for (int i = 0; i < heights.size(); i++) {
      sum += weights.get(i) * lever(i) * lever(i);
    }
    return sum;
  }

  /** Stations with a vector and a height, by clamping, of the clock angles of the first one met. */
  static Map<Integer, List<Station>> byClamping(List<Station> stations) {
    Map<Integer, List<Station>> groups = new LinkedHashMap<>();
    List<Station> usable = stations.stream().filter(s -> s.vector().isPresent()).toList();
    for (Station s : usable) {
      if (sameClock(s, usable.get(0))) {
        groups.computeIfAbsent(s.sweep().clamping(), c -> new ArrayList<>()).add(s);
      }
    }
    return groups;
  }

  private static boolean sameClock(Station a, Station b) {
    return a.sweep().collet().equals(b.sweep().collet())
        && a.sweep().shank().equals(b.sweep().shank());
  }
}
