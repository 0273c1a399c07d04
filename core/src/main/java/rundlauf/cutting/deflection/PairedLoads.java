package rundlauf.cutting.deflection;

import java.util.List;
import rundlauf.cutting.Conditions;
import rundlauf.cutting.Tool;
import rundlauf.cutting.force.ForceTurn;
import rundlauf.maths.Samples;

/**
 * The cutting force of each moment as two forces at fixed heights that push and turn the cutter as
 * it does. The heights are Gauss's of the engaged depth, so that a force spread evenly over it
 * bends the cutter as its two shares do.
 *
 * @param low height of the lower share above the tip [m]
 * @param high height of the higher share [m]
 * @param lowX along the feed, by angle [N]
 * @param lowY across it
 * @param highX along the feed
 * @param highY across it
 */
record PairedLoads(
    double low, double high, Samples lowX, Samples lowY, Samples highX, Samples highY) {
  /**
   * Smallest squared resultant of the engaged edges, over that of edges all alike in angle, from
   * which tangential and radial parts can be told apart; our choice.
   */
  private static final double TOLD_APART = 0.05;

  static PairedLoads of(ForceTurn turn, Tool tool, Conditions conditions) {
    return of(turn, conditions, EngagedTurn.of(turn, tool, conditions));
  }

  static PairedLoads of(ForceTurn turn, Conditions conditions, EngagedTurn engaged) {
    int n = turn.x().size();
    double low = conditions.axial() * (0.5 - 1 / Math.sqrt(12));
    double high = conditions.axial() - low;
    double[] highX = new double[n];
    double[] highY = new double[n];
    for (int i = 0; i < n; i++) {
      double x = turn.x().get(i);
      double y = turn.y().get(i);
      double[] moments = moments(x, y, engaged.edges().get(i), conditions.axial());
      highX[i] = (moments[0] - x * low) / (high - low);
      highY[i] = (moments[1] - y * low) / (high - low);
    }
    return new PairedLoads(
        low,
        high,
        Samples.generate(n, i -> turn.x().get(i) - highX[i]),
        Samples.generate(n, i -> turn.y().get(i) - highY[i]),
        Samples.of(highX),
        Samples.of(highY));
  }

  /** The teeth that cut, from 0. */
  static List<Integer> cutting(ForceTurn turn) {
    return turn.teeth().stream()
        .filter(tooth -> tooth.share() > 0)
        .map(tooth -> tooth.tooth() - 1)
        .toList();
  }

  /**
   * Force times height, along x and y: tangential and radial force per weighted length follow from
   * the resultant, and from them the moment.
   */
  private static double[] moments(double x, double y, EngagedEdges edges, double axial) {
    double s = edges.sine();
    double c = edges.cosine();
    double size = s * s + c * c;
    if (size <= TOLD_APART * edges.length() * edges.length()) {
      double height = edges.length() > 0 ? edges.height() / edges.length() : axial / 2;
      return new double[] {x * height, y * height};
    }
    double tangential = (y * s - x * c) / size;
    double radial = -(x * s + y * c) / size;
    return new double[] {
      -tangential * edges.cosineHeight() - radial * edges.sineHeight(),
      tangential * edges.sineHeight() - radial * edges.cosineHeight()
    };
  }
}
