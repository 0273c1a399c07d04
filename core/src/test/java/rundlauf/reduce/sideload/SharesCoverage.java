package rundlauf.reduce.sideload;

import java.util.List;
import java.util.Locale;
import rundlauf.maths.Draws;
import rundlauf.maths.Stream;
import rundlauf.maths.Work;
import rundlauf.quantity.Interval;
import rundlauf.reduce.sideload.Shares.Share;
import rundlauf.simulated.TakenRow;
import rundlauf.simulated.TakenRow.Spot;

/**
 * How often the interval of each joint's share held the true one.
 *
 * @param held by joint: collet, bearings, mount, frame
 * @param width mean width of their intervals
 */
record SharesCoverage(double scatterUm, List<Double> held, List<Double> width) {
  private static final int JOINTS = 4;

  static SharesCoverage of(int trials, double scatterUm, List<Spot> spots) {
    double[] held = new double[JOINTS];
    double[] width = new double[JOINTS];
    Stream stream = Stream.of(41, "shares");
    for (int i = 0; i < trials; i++) {
      TakenRow row = PushedRow.taken(stream, spots, 10e-6, scatterUm * 1e-6);
      List<Share> found =
          SideLoadReduction.reduce(row.readings("row"), new Draws(i, 600), Work.sequential())
              .compliances()
              .shares()
              .entries();
      for (int j = 0; j < JOINTS; j++) {
        Interval interval = found.get(j + 1).share().estimate().orElseThrow().interval();
        held[j] += interval.holds(row.share(j)) ? 1.0 / trials : 0;
        width[j] += (interval.high() - interval.low()) / trials;
      }
    }
    return new SharesCoverage(scatterUm, boxed(held), boxed(width));
  }

  private static List<Double> boxed(double[] values) {
    return java.util.Arrays.stream(values).boxed().toList();
  }

  double least() {
    return held.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
  }

  /** A line of the table in docs/quality.md. */
  String line() {
    StringBuilder line = new StringBuilder();
    line.append(String.format(Locale.ROOT, "| %.1f |", scatterUm));
    for (int j = 0; j < JOINTS; j++) {
      line.append(String.format(Locale.ROOT, " %.1f %% (%.2f) |", 100 * held.get(j), width.get(j)));
    }
    return line.toString();
  }
}
