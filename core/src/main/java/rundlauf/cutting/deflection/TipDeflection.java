package rundlauf.cutting.deflection;

import rundlauf.cutting.Conditions;
import rundlauf.cutting.Tool;
import rundlauf.cutting.force.ForceTurn;

/**
 * How far the tip is pushed aside at most over a revolution, whichever way.
 *
 * @param cutter by the cutter's own bending [m]
 * @param setup by the setup behind it [m]
 * @param together both at the same moment [m]
 */
public record TipDeflection(double cutter, double setup, double together) {
  /**
   * Largest deflections of a turn.
   *
   * @param turn forces on the cutter over a revolution [N]
   * @param tool the cutter
   * @param conditions how it is cut
   * @param flexibility how cutter and setup give way
   * @return each the largest over the angles, so they need not add up; exact for the model
   * @see "docs/methods/deflection.md"
   */
  public static TipDeflection of(
      ForceTurn turn, Tool tool, Conditions conditions, Flexibility flexibility) {
    return of(turn, PairedLoads.of(turn, tool, conditions), flexibility);
  }

  static TipDeflection of(ForceTurn turn, PairedLoads loads, Flexibility flexibility) {
    double fromLow = flexibility.cutter().compliance(loads.low(), 0);
    double fromHigh = flexibility.cutter().compliance(loads.high(), 0);
    double cutter = 0;
    double setup = 0;
    double together = 0;
    for (int i = 0; i < turn.x().size(); i++) {
      double bentX = fromLow * loads.lowX().get(i) + fromHigh * loads.highX().get(i);
      double bentY = fromLow * loads.lowY().get(i) + fromHigh * loads.highY().get(i);
      double shiftX = flexibility.setupX() * turn.x().get(i);
      double shiftY = flexibility.setupY() * turn.y().get(i);
      cutter = Math.max(cutter, Math.hypot(bentX, bentY));
      setup = Math.max(setup, Math.hypot(shiftX, shiftY));
      together = Math.max(together, Math.hypot(bentX + shiftX, bentY + shiftY));
    }
    return new TipDeflection(cutter, setup, together);
  }
}
