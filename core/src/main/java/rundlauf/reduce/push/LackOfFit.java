package rundlauf.reduce.push;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rundlauf.maths.Distributions;
import rundlauf.maths.LeastSquares;
import rundlauf.readings.LoadReadings.Point;

/**
 * Whether a straight line fits: the line against a level of its own for every load, by the F of
 * lack of fit.
 */
public final class LackOfFit {
  private LackOfFit() {}

  /**
   * The test.
   *
   * @param lines readings with at least three loads on one side and one of them read again, or read
   *     rising and falling
   * @param step what readings are rounded to [m]: the scatter that the repeats show is taken as no
   *     smaller than rounding alone makes it, step/√12
   * @return F and its tail; empty when the readings cannot bear the test
   */
  public static Optional<Straightness> of(LoadLines lines, double step) {
    double[][] free = levels(lines);
    double[][] line = lines.design();
    int spare = free.length - free[0].length;
    int bends = free[0].length - line[0].length;
    if (lines.secant() || spare < 1 || bends < 1 || !LoadLines.independent(free)) {
      return Optional.empty();
    }
    double pure = LeastSquares.fit(free, lines.readings()).rss();
    double straight = LeastSquares.fit(line, lines.readings()).rss();
    double scatter = Math.max(pure / spare, step * step / 12);
    double f = Math.max(0, straight - pure) / bends / scatter;
    return Optional.of(new Straightness(f, Distributions.fisherTail(f, bends, spare)));
  }

  /** A column for every load of every side, and the branch's as in the line. */
  private static double[][] levels(LoadLines lines) {
    List<Point> rows = lines.rows();
    Map<String, Integer> columns = new LinkedHashMap<>();
    for (Point p : rows) {
      columns.putIfAbsent(key(p), columns.size());
    }
    double[][] design = new double[rows.size()][columns.size() + (lines.loop() ? 1 : 0)];
    for (int i = 0; i < design.length; i++) {
      Point p = rows.get(i);
      design[i][columns.getOrDefault(key(p), 0)] = 1;
      if (lines.loop()) {
        design[i][columns.size()] = LoadLines.sign(p) * LoadLines.branch(p) / 2;
      }
    }
    return design;
  }

  private static String key(Point p) {
    return p.zeroed() + " " + LoadLines.sign(p) + " " + p.load();
  }
}
