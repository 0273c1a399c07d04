package rundlauf.cutting.deflection;

import rundlauf.cutting.Conditions;
import rundlauf.cutting.Tool;
import rundlauf.cutting.force.ForceTurn;
import rundlauf.maths.Samples;

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
   * @return each the largest over the angles, so they need not add up; exact for the model: the
   *     force acts at the mean height of the engaged edges
   * @see "docs/methods/deflection.md"
   */
  public static TipDeflection of(
      ForceTurn turn, Tool tool, Conditions conditions, Flexibility flexibility) {
    Samples heights = LoadHeights.of(turn, tool, conditions);
    double cutter = 0;
    double setup = 0;
    double together = 0;
    for (int i = 0; i < heights.size(); i++) {
      double x = turn.x().get(i);
      double y = turn.y().get(i);
      double bending = flexibility.cutter().compliance(heights.get(i), 0);
      double setupX = flexibility.setupX();
      double setupY = flexibility.setupY();
      cutter = Math.max(cutter, Math.hypot(bending * x, bending * y));
      setup = Math.max(setup, Math.hypot(setupX * x, setupY * y));
      together = Math.max(together, Math.hypot((bending + setupX) * x, (bending + setupY) * y));
    }
    return new TipDeflection(cutter, setup, together);
  }
}
