package rundlauf.cutting.deflection;

import java.util.List;
import java.util.stream.IntStream;
import rundlauf.cutting.Conditions;
import rundlauf.cutting.Tool;
import rundlauf.cutting.force.ForceTurn;

/**
 * What stands in the cut at every angle of a turn. It rests on the tool, the cut and which teeth
 * work, not on the forces, so that draws which only differ in those can share it.
 *
 * @param cutting the teeth that work, from 0
 * @param edges at each angle
 */
record EngagedTurn(
    Tool tool, Conditions conditions, List<Integer> cutting, List<EngagedEdges> edges) {
  static EngagedTurn of(ForceTurn turn, Tool tool, Conditions conditions) {
    int n = turn.x().size();
    List<Integer> cutting = PairedLoads.cutting(turn);
    List<EngagedEdges> edges =
        IntStream.range(0, n)
            .mapToObj(i -> EngagedEdges.at(2 * Math.PI * i / n, cutting, tool, conditions))
            .toList();
    return new EngagedTurn(tool, conditions, cutting, edges);
  }

  /** Whether it is that of another turn too. */
  boolean fits(ForceTurn turn, Tool other, Conditions others) {
    return edges.size() == turn.x().size()
        && tool.equals(other)
        && conditions.equals(others)
        && cutting.equals(PairedLoads.cutting(turn));
  }
}
