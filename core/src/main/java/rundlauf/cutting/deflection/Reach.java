package rundlauf.cutting.deflection;

import java.util.List;
import rundlauf.cutting.Conditions;
import rundlauf.cutting.Tool;
import rundlauf.cutting.ToolRunout;
import rundlauf.cutting.force.ForceTurn;
import rundlauf.cutting.surface.FeedMarks;
import rundlauf.maths.Samples;

/** How far beyond D/2 each cutting tooth reaches into a wall as it passes it, displaced. */
final class Reach {
  private static final double TURN = 2 * Math.PI;

  /**
   * How far from the pass a tooth is looked at [rad]. At a sixth of a turn the edge stands half a
   * radius off the wall: no deflection that leaves a cutter whole brings it back there.
   */
  private static final double WINDOW = Math.PI / 3;

  private static final int FEWEST_ANGLES = 72;

  /** Steps of the arc in the cut below which no line is drawn through two of them. */
  private static final double FEWEST_IN_CUT = 3.5;

  private final PairedLoads loads;
  private final List<Integer> cutting;
  private final Tool tool;
  private final Conditions conditions;
  private final ToolRunout runout;
  private final Flexibility flexibility;
  private final double step;

  Reach(
      ForceTurn turn,
      PairedLoads loads,
      Tool tool,
      Conditions conditions,
      ToolRunout runout,
      Flexibility flexibility) {
    if (turn.y().size() < FEWEST_ANGLES) {
      throw new IllegalArgumentException(
          turn.y().size() + " angles are fewer than " + FEWEST_ANGLES + " in a turn");
    }
    this.loads = loads;
    this.cutting = PairedLoads.cutting(turn);
    this.tool = tool;
    this.conditions = conditions;
    this.runout = runout;
    this.flexibility = flexibility;
    this.step = TURN / turn.y().size();
  }

  double depth() {
    return conditions.axial();
  }

  /** Height of the feed marks that teeth of these reaches leave [m]. */
  double cusp(Samples reaches) {
    return FeedMarks.height(tool.diameter() / 2, conditions.feedPerTooth(), reaches);
  }

  /**
   * Reaches of all teeth, in their order; of a tooth that never cuts far behind all others.
   *
   * @param side 1 for the +y wall, −1 for the −y wall
   * @param z height above the tip [m]
   */
  Samples of(int side, double z) {
    var push =
        Push.of(
            loads.lowY(),
            loads.highY(),
            side * flexibility.y(loads.low(), z),
            side * flexibility.y(loads.high(), z));
    return Samples.generate(
        tool.teeth(), k -> cutting.contains(k) ? tooth(k, side, z, push) : -tool.diameter() / 2);
  }

  /**
   * One tooth: the displacement as it passes, and the farthest it comes at the angles near the pass
   * at which it is in the cut.
   */
  private double tooth(int k, int side, double z, Push push) {
    double radius = radius(k, z);
    double pass = wallAngle(side) + TURN * k / tool.teeth() + tool.lag() * z;
    double farthest = radius + atPass(k, side, z, pass, push);
    int inside = inside(side);
    int first = inside > 0 ? (int) Math.ceil(pass / step) : (int) Math.floor(pass / step);
    double arc = Math.min(WINDOW, exit() - entry());
    double most = push.most();
    for (int i = first; Math.abs(i * step - pass) <= arc; i += inside) {
      double undisplaced = radius * Math.cos(i * step - pass);
      if (undisplaced + most < farthest) {
        break; // farther off no push of this turn brings the edge back
      }
      if (Math.abs(i * step - pass) > step / 2) { // nearer ones may stand outside the cut
        farthest = Math.max(farthest, undisplaced + push.at(i));
      }
    }
    return farthest - tool.diameter() / 2;
  }

  /**
   * Displacement as the tooth passes. With helix the force changes steadily and is interpolated.
   * Where a whole edge takes up or leaves the cut within two steps, it is that of the part which is
   * still (or already) in the cut as the height looked at passes, between the forces on both sides.
   */
  private double atPass(int k, int side, double z, double pass, Push push) {
    double spread = tool.lag() * conditions.axial();
    if (Math.abs(spread) >= 2 * step) {
      int below = (int) Math.floor(pass / step);
      double part = pass / step - below;
      return (1 - part) * push.at(below) + part * push.at(below + 1);
    }
    double tip = wallAngle(side) + TURN * k / tool.teeth();
    int inside = inside(side);
    double within = beyond(tip, spread, inside, pass, push);
    double share = shareWithin(side, z);
    return share == 1
        ? within
        : share * within + (1 - share) * beyond(tip, spread, -inside, pass, push);
  }

  /** Displacement at the pass, drawn on from the angles at which no part of the edge passes. */
  private double beyond(double tip, double spread, int way, double pass, Push push) {
    double edge = way > 0 ? Math.max(tip, tip + spread) : Math.min(tip, tip + spread);
    int near = way > 0 ? (int) Math.floor(edge / step + 1.5) : (int) Math.ceil(edge / step - 1.5);
    if (exit() - entry() < FEWEST_IN_CUT * step) {
      return push.at(near);
    }
    double away = Math.abs(near * step - pass) / step;
    return push.at(near) + away * (push.at(near) - push.at(near + way));
  }

  /** How much of the edge is in the cut as the height {@code z} of it passes the wall. */
  private double shareWithin(int side, double z) {
    if (tool.lag() == 0) {
      return 1; // all of it passes at once: the last that it does in the cut
    }
    double lower = z / conditions.axial();
    return (side > 0) == (tool.lag() > 0) ? lower : 1 - lower;
  }

  /** Where the cut lies from the pass: at larger angles for φ = 0, at smaller ones for φ = π. */
  private static int inside(int side) {
    return side > 0 ? 1 : -1;
  }

  private static double wallAngle(int side) {
    return side > 0 ? 0 : Math.PI;
  }

  private double entry() {
    return conditions.entry(tool.diameter());
  }

  private double exit() {
    return conditions.exit(tool.diameter());
  }

  /** Displacement toward a wall at one height, by angle; never more than {@code most}. */
  private record Push(
      Samples lowForce, Samples highForce, double fromLow, double fromHigh, double most) {
    static Push of(Samples low, Samples high, double fromLow, double fromHigh) {
      double most = Double.NEGATIVE_INFINITY;
      for (int i = 0; i < low.size(); i++) {
        most = Math.max(most, fromLow * low.get(i) + fromHigh * high.get(i));
      }
      return new Push(low, high, fromLow, fromHigh, most);
    }

    double at(int angle) {
      int i = Math.floorMod(angle, lowForce.size());
      return fromLow * lowForce.get(i) + fromHigh * highForce.get(i);
    }
  }

  private double radius(int k, double z) {
    double behind = TURN * k / tool.teeth() + tool.lag() * z;
    return tool.diameter() / 2
        + runout.eccentricity() * Math.cos(runout.firstTooth() - behind)
        + runout.tilt() * z * Math.cos(runout.tiltAngle() - behind);
  }
}
