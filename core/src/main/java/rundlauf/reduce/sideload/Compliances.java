package rundlauf.reduce.sideload;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;

/**
 * Where a nose gives way: by direction and by distance.
 *
 * @param soft the axis along which it gives way most
 * @param stiff the axis square to it
 * @param reach at other distances of load and dial; empty where the trial cannot bear it
 * @param otherNoses at the trial's own distance, were the nose longer or shorter; empty likewise
 * @param shares by joint
 * @param sayings why there is nothing of one of them, and what was assumed
 * @param pushes what the axes were taken from; none where they are not known
 */
public record Compliances(
    Axis soft,
    Axis stiff,
    List<Reach> reach,
    List<Reach> otherNoses,
    Shares shares,
    List<Saying> sayings,
    List<Push> pushes) {

  public Compliances {
    reach = List.copyOf(reach);
    otherNoses = List.copyOf(otherNoses);
    sayings = List.copyOf(sayings);
    pushes = List.copyOf(pushes);
  }

  /**
   * Pushes along one line.
   *
   * @param direction of the first of them [rad]
   * @param dial the direction it was read along [rad]
   * @param compliance travel along the dial over force, over the cosine between both [m/N]
   */
  public record Push(double direction, double dial, Figure compliance) {}

  /** An axis of the compliance: its angle from +X toward +Y, modulo half a turn, and stiffness. */
  public record Axis(Figure angle, Figure stiffness) {
    static Axis missing(Saying why) {
      return new Axis(new Missing(Unit.DEGREE, why), new Missing(Unit.NEWTON_PER_MICROMETRE, why));
    }
  }

  /** A distance [m] and the stiffness that goes with it [N/m]. */
  public record Reach(double at, Figure stiffness) {}

  /** Nothing, for one reason. */
  public static Compliances none(Saying why) {
    Axis axis = Axis.missing(why);
    return new Compliances(
        axis, axis, List.of(), List.of(), Shares.none(List.of()), List.of(), List.of());
  }

  /** Every figure by its path. */
  Map<String, Figure> figures() {
    Map<String, Figure> all = new LinkedHashMap<>();
    all.put("directions.soft.angle", soft.angle());
    all.put("directions.soft.stiffness", soft.stiffness());
    all.put("directions.stiff.angle", stiff.angle());
    all.put("directions.stiff.stiffness", stiff.stiffness());
    for (int i = 0; i < reach.size(); i++) {
      all.put("reach[" + i + "].stiffness", reach.get(i).stiffness());
    }
    all.putAll(shares.figures());
    return all;
  }
}
