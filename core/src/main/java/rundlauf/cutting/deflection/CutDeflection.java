package rundlauf.cutting.deflection;

import rundlauf.cutting.Conditions;
import rundlauf.cutting.Tool;
import rundlauf.cutting.ToolRunout;
import rundlauf.cutting.force.ForceTurn;

/**
 * All that the forces of a turn bend.
 *
 * @param tip how far the tip is pushed aside
 * @param stress in the cutter
 * @param walls how far they lie from where they were meant to be
 */
public record CutDeflection(TipDeflection tip, CutterStress stress, WallError walls) {
  /**
   * The three together, each as its own {@code of} gives it; the engaged edges are gone along once.
   *
   * @param turn forces on the cutter over a revolution, rigid or with the deflection fed back [N]
   * @param tool the cutter; its teeth are those of {@code turn}
   * @param conditions how it is cut
   * @param runout of the teeth
   * @param flexibility how the cutter and the setup give way
   * @return exact for the model; doubt comes from drawing the arguments
   * @throws IllegalArgumentException for a turn of fewer than 72 angles
   * @see "docs/methods/deflection.md, docs/methods/wall-error.md"
   */
  public static CutDeflection of(
      ForceTurn turn,
      Tool tool,
      Conditions conditions,
      ToolRunout runout,
      Flexibility flexibility) {
    PairedLoads loads = PairedLoads.of(turn, tool, conditions);
    return of(turn, loads, tool, conditions, runout, flexibility, WallError.HEIGHTS);
  }

  static CutDeflection of(
      ForceTurn turn,
      PairedLoads loads,
      Tool tool,
      Conditions conditions,
      ToolRunout runout,
      Flexibility flexibility,
      int heights) {
    Reach reach = new Reach(turn, loads, tool, conditions, runout, flexibility);
    return new CutDeflection(
        TipDeflection.of(turn, loads, flexibility),
        CutterStress.of(loads, tool),
        WallError.of(reach, conditions.operation(), heights));
  }
}
