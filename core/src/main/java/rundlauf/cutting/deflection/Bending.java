package rundlauf.cutting.deflection;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rundlauf.cutting.Conditions;
import rundlauf.cutting.Tool;
import rundlauf.cutting.ToolRunout;
import rundlauf.cutting.force.ForceTurn;

/** Bends many draws of one cut: what they have in common is worked out once. */
public final class Bending {
  /** Heights of a wall that one draw of many is given; our choice (docs/methods/predict.md). */
  private static final int HEIGHTS = 9;

  private final Map<List<Integer>, EngagedTurn> byTeeth = new LinkedHashMap<>();

  /** As {@link CutDeflection#of}, the walls looked at in 9 heights instead of 41. */
  public CutDeflection of(
      ForceTurn turn,
      Tool tool,
      Conditions conditions,
      ToolRunout runout,
      Flexibility flexibility) {
    List<Integer> cutting = PairedLoads.cutting(turn);
    EngagedTurn engaged =
        byTeeth.compute(
            cutting,
            (teeth, known) ->
                known != null && known.fits(turn, tool, conditions)
                    ? known
                    : EngagedTurn.of(turn, tool, conditions));
    PairedLoads loads = PairedLoads.of(turn, conditions, engaged);
    return CutDeflection.of(turn, loads, tool, conditions, runout, flexibility, HEIGHTS);
  }
}
