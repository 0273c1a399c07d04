package rundlauf.cutting.deflection;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rundlauf.cutting.Conditions;
import rundlauf.cutting.Operation;
import rundlauf.cutting.Tool;
import rundlauf.cutting.ToolRunout;
import rundlauf.cutting.force.ForceTurn;
import rundlauf.maths.Samples;

/**
 * How far the walls that stay lie from where they were meant to be, D/2 from the path of the axis.
 *
 * @param plusY the wall on the +y side, made where a tooth passes φ = 0; empty for climb milling
 * @param minusY the wall on the −y side, made where a tooth passes φ = π; empty for conventional
 *     milling
 */
public record WallError(Optional<Wall> plusY, Optional<Wall> minusY) {
  /** Heights looked at, evenly from the tip to a_p; our choice: docs/methods/wall-error.md. */
  static final int HEIGHTS = 41;

  /**
   * One wall.
   *
   * @param largest the error of largest size over the depth [m], with its sign: positive is
   *     material left standing
   * @param at the height above the tip at which it is [m]
   * @param heights above the tip, rising from 0 to a_p [m]
   * @param errors at those heights [m]
   * @param cusp largest height of the feed marks over the depth, peak to valley [m]
   */
  public record Wall(double largest, double at, Samples heights, Samples errors, double cusp) {}

  /**
   * Errors of the walls that a turn leaves.
   *
   * <p>The wall at height z is made by the tooth that reaches farthest while it passes φ = 0 or π
   * there, with what the edge is displaced by <em>then</em>: {@code R_k(z) |cos φ_k(z)| ± y(z)},
   * its maximum over all cutting teeth and over the angles at which the tooth is in the cut. The
   * displacement is that by the force of that moment, shared along the engaged edges.
   *
   * @param turn forces on the cutter over a revolution, rigid or with the deflection fed back [N];
   *     its angles 1/72 turn apart or closer
   * @param tool the cutter; its teeth are those of {@code turn}
   * @param conditions how it is cut
   * @param runout of the teeth
   * @param flexibility how the cutter and the setup give way
   * @return the walls, exact for the model; doubt comes from drawing the arguments
   * @throws IllegalArgumentException for a turn of fewer than 72 angles
   * @see "docs/methods/wall-error.md"
   * @see "Schmitz, Mann, Int. J. Mach. Tools Manuf. 46 (2006) 1369-1377"
   */
  public static WallError of(
      ForceTurn turn,
      Tool tool,
      Conditions conditions,
      ToolRunout runout,
      Flexibility flexibility) {
    PairedLoads loads = PairedLoads.of(turn, tool, conditions);
    return of(
        new Reach(turn, loads, tool, conditions, runout, flexibility),
        conditions.operation(),
        HEIGHTS);
  }

  static WallError of(Reach reach, Operation operation, int heights) {
    return new WallError(
        operation == Operation.SIDE_DOWN ? Optional.empty() : Optional.of(wall(reach, 1, heights)),
        operation == Operation.SIDE_UP ? Optional.empty() : Optional.of(wall(reach, -1, heights)));
  }

  /**
   * As {@link #of(ForceTurn, Tool, Conditions, ToolRunout, Flexibility)}, from compliances at the
   * tip that hold the cutter's own bending already.
   *
   * @param complianceX along the feed [m/N], at least the cutter's own
   * @param complianceY across it
   */
  public static WallError of(
      ForceTurn turn,
      Tool tool,
      Conditions conditions,
      ToolRunout runout,
      double complianceX,
      double complianceY) {
    Flexibility flexibility = Flexibility.ofTip(tool, complianceX, complianceY);
    return of(turn, tool, conditions, runout, flexibility);
  }

  /** The error of largest size over all walls [m], with its sign. */
  public double largest() {
    double plus = plusY.map(Wall::largest).orElse(0.0);
    double minus = minusY.map(Wall::largest).orElse(0.0);
    return Math.abs(minus) > Math.abs(plus) ? minus : plus;
  }

  private static Wall wall(Reach reach, int side, int count) {
    List<Double> heights = new ArrayList<>();
    List<Double> errors = new ArrayList<>();
    double cusp = 0;
    int worst = 0;
    for (int i = 0; i < count; i++) {
      double z = reach.depth() * i / (count - 1);
      Samples teeth = reach.of(side, z);
      heights.add(z);
      errors.add(-teeth.max());
      cusp = Math.max(cusp, reach.cusp(teeth));
      worst = Math.abs(errors.get(i)) > Math.abs(errors.get(worst)) ? i : worst;
    }
    return new Wall(
        errors.get(worst), heights.get(worst), Samples.of(heights), Samples.of(errors), cusp);
  }
}
