package rundlauf.cutting.deflection;

import java.util.List;
import rundlauf.cutting.Conditions;
import rundlauf.cutting.Tool;
import rundlauf.cutting.force.ForceTurn;
import rundlauf.maths.Samples;

/**
 * Height of the cutting force above the tip, by angle of tooth 1 at the tip: the mean height of the
 * engaged edges, weighted with sin φ as the chip is.
 */
final class LoadHeights {
  /** Gauss–Legendre on three points: nodes and weights of the interval −1 to 1. */
  private static final double NODE = Math.sqrt(0.6);

  private static final double OUTER = 5 / 9.0;
  private static final double MIDDLE = 8 / 9.0;

  private final Tool tool;
  private final Conditions conditions;
  private final List<Integer> cutting;

  private LoadHeights(Tool tool, Conditions conditions, List<Integer> cutting) {
    this.tool = tool;
    this.conditions = conditions;
    this.cutting = cutting;
  }

  /**
   * Heights at the angles of a turn.
   *
   * @return n heights [m], 0 to a_p; a_p / 2 where nothing is engaged
   */
  static Samples of(ForceTurn turn, Tool tool, Conditions conditions) {
    int n = turn.x().size();
    var heights = new LoadHeights(tool, conditions, cutting(turn));
    return Samples.generate(n, i -> heights.at(2 * Math.PI * i / n));
  }

  /** The teeth that cut, from 0. */
  static List<Integer> cutting(ForceTurn turn) {
    return turn.teeth().stream()
        .filter(tooth -> tooth.share() > 0)
        .map(tooth -> tooth.tooth() - 1)
        .toList();
  }

  private double at(double angle) {
    double[] sums = new double[2];
    for (int tooth : cutting) {
      add(angle - 2 * Math.PI * tooth / tool.teeth(), sums);
    }
    return sums[0] > 0 ? sums[1] / sums[0] : conditions.axial() / 2;
  }

  /** Adds what one tooth, at {@code tip} at the tip, has in the cut. */
  private void add(double tip, double[] sums) {
    double lag = tool.lag();
    double top = tip - lag * conditions.axial();
    double entry = conditions.entry(tool.diameter());
    double exit = conditions.exit(tool.diameter());
    double least = Math.min(tip, top);
    double most = Math.max(tip, top);
    double first = Math.ceil((least - exit) / (2 * Math.PI));
    for (double turns = first; 2 * Math.PI * turns + entry <= most; turns++) {
      double low = Math.max(least, entry + 2 * Math.PI * turns);
      double high = Math.min(most, exit + 2 * Math.PI * turns);
      addArc(tip, low, high, sums);
    }
  }

  /** The heights at which the tooth stands between two angles. */
  private void addArc(double tip, double low, double high, double[] sums) {
    double lag = tool.lag();
    double from = lag == 0 ? 0 : Math.min((tip - low) / lag, (tip - high) / lag);
    double to = lag == 0 ? conditions.axial() : Math.max((tip - low) / lag, (tip - high) / lag);
    for (int node = -1; node <= 1; node++) {
      double z = (from + to) / 2 + node * NODE * (to - from) / 2;
      double weight =
          (to - from) * (node == 0 ? MIDDLE : OUTER) * Math.abs(Math.sin(tip - lag * z));
      sums[0] += weight;
      sums[1] += weight * z;
    }
  }
}
