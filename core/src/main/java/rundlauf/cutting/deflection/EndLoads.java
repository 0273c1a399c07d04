package rundlauf.cutting.deflection;

import java.util.List;
import rundlauf.cutting.Conditions;
import rundlauf.cutting.Tool;
import rundlauf.cutting.force.ForceTurn;
import rundlauf.maths.Samples;

/**
 * The cutting force of each moment shared between the two ends of the engaged depth, as a lever
 * would share it: it bends the cutter as the force along the edges does.
 *
 * @param tipX at the tip, along the feed, by angle [N]
 * @param tipY at the tip, across it
 * @param topX at height a_p, along the feed
 * @param topY at height a_p, across it
 */
record EndLoads(Samples tipX, Samples tipY, Samples topX, Samples topY) {
  /**
   * Smallest squared resultant of the engaged edges, over that of edges all alike in angle, from
   * which tangential and radial parts can be told apart; our choice.
   */
  private static final double TOLD_APART = 0.05;

  static EndLoads of(ForceTurn turn, Tool tool, Conditions conditions) {
    int n = turn.x().size();
    List<Integer> cutting = cutting(turn);
    double[] topX = new double[n];
    double[] topY = new double[n];
    for (int i = 0; i < n; i++) {
      double x = turn.x().get(i);
      double y = turn.y().get(i);
      var edges = EngagedEdges.at(2 * Math.PI * i / n, cutting, tool, conditions);
      double[] moments = moments(x, y, edges, conditions.axial());
      topX[i] = moments[0] / conditions.axial();
      topY[i] = moments[1] / conditions.axial();
    }
    return new EndLoads(
        Samples.generate(n, i -> turn.x().get(i) - topX[i]),
        Samples.generate(n, i -> turn.y().get(i) - topY[i]),
        Samples.of(topX),
        Samples.of(topY));
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
