package rundlauf.character;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rundlauf.maths.Draws;
import rundlauf.maths.Samples;
import rundlauf.quantity.Saying;
import rundlauf.safety.Standing;

/**
 * What a setup is, as far as a cut feels it: the narrow waist between what was measured and what a
 * cut will do.
 *
 * @param name of the setup; empty when it was described in a cut
 * @param eccentricity of the axis at the cutter's tip, in the next clamping
 * @param firstTooth how far tooth 1 at the tip stands ahead of the high spot; assumed anywhere in
 *     the turn when nobody said
 * @param tilt change of the axis' offset with height above the tip
 * @param tiltAngle how far {@code tiltOf} stands ahead of the tilt's high spot
 * @param tiltOf what the tilt's angle is counted from
 * @param stiffnessX at the tip along the feed, without the cutter's own bending
 * @param stiffnessY across it
 * @param slowest usable speed
 * @param fastest usable speed, idle
 * @param droop speed lost under load
 * @param power at the shaft at {@code powerAt}
 * @param powerAt speed that {@code power} is meant for
 * @param standing whether the spindle may be powered; empty when there is no bench to tell
 * @param because why it is held; empty when it is not
 * @param cautions what else must be said of it
 */
public record SetupCharacter(
    String name,
    Trait eccentricity,
    Trait firstTooth,
    Trait tilt,
    Trait tiltAngle,
    TiltOf tiltOf,
    Trait stiffnessX,
    Trait stiffnessY,
    Trait slowest,
    Trait fastest,
    Trait droop,
    Trait power,
    Trait powerAt,
    Optional<Standing> standing,
    List<Saying> because,
    List<Saying> cautions) {
  /** What the tilt's angle is counted from. */
  public enum TiltOf {
    /** From tooth 1, as cuts write it. */
    FIRST_TOOTH,
    /** From the eccentricity's high spot: the tooth then stands ahead of both by what it does. */
    HIGH_SPOT
  }

  public SetupCharacter {
    because = List.copyOf(because);
    cautions = List.copyOf(cautions);
  }

  /** The same with these cautions instead of its own. */
  public SetupCharacter withCautions(List<Saying> others) {
    return new SetupCharacter(
        name,
        eccentricity,
        firstTooth,
        tilt,
        tiltAngle,
        tiltOf,
        stiffnessX,
        stiffnessY,
        slowest,
        fastest,
        droop,
        power,
        powerAt,
        standing,
        because,
        others);
  }

  /** Every trait by its code, in the order they are read. */
  public Map<String, Trait> traits() {
    Map<String, Trait> all = new LinkedHashMap<>();
    all.put("eccentricity", eccentricity);
    all.put("first-tooth", firstTooth);
    all.put("tilt", tilt);
    all.put("tilt-angle", tiltAngle);
    all.put("stiffness-x", stiffnessX);
    all.put("stiffness-y", stiffnessY);
    all.put("slowest", slowest);
    all.put("fastest", fastest);
    all.put("droop", droop);
    all.put("power", power);
    all.put("power-at", powerAt);
    return all;
  }

  /**
   * Joint draws: state i takes draw i of every trait, so that traits which share a cause move
   * together.
   *
   * @param draws that the traits' figures were made with
   * @param count how many of them, at most {@code draws.count()}
   */
  public List<SetupState> states(Draws draws, int count) {
    Samples[] all = {
      eccentricity.draws(draws, 0),
      firstTooth.draws(draws, 0),
      tilt.draws(draws, 0),
      tiltAngle.draws(draws, 0),
      stiffnessX.draws(draws, Double.POSITIVE_INFINITY),
      stiffnessY.draws(draws, Double.POSITIVE_INFINITY),
      slowest.draws(draws, 0),
      fastest.draws(draws, Double.POSITIVE_INFINITY),
      droop.draws(draws, 0),
      power.draws(draws, Double.POSITIVE_INFINITY),
      powerAt.draws(draws, 1)
    };
    List<SetupState> states = new ArrayList<>(count);
    for (int i = 0; i < count; i++) {
      double[] v = new double[all.length];
      for (int j = 0; j < v.length; j++) {
        v[j] = all[j].get(i);
      }
      states.add(state(v));
    }
    return states;
  }

  /**
   * The central state: every trait at its value, but for the place of tooth 1, which is given.
   *
   * @param place of tooth 1 ahead of the high spot [rad]
   */
  public SetupState central(double place) {
    return state(
        new double[] {
          eccentricity.central(0),
          place,
          tilt.central(0),
          tiltAngle.central(0),
          stiffnessX.central(Double.POSITIVE_INFINITY),
          stiffnessY.central(Double.POSITIVE_INFINITY),
          slowest.central(0),
          fastest.central(Double.POSITIVE_INFINITY),
          droop.central(0),
          power.central(Double.POSITIVE_INFINITY),
          powerAt.central(1)
        });
  }

  private SetupState state(double[] v) {
    double tiltAhead = tiltOf == TiltOf.HIGH_SPOT ? v[1] + v[3] : v[3];
    return new SetupState(
        Math.max(0, v[0]),
        v[1],
        Math.max(0, v[2]),
        tiltAhead,
        v[4],
        v[5],
        v[6],
        v[7],
        Math.max(0, v[8]),
        v[9],
        v[10]);
  }
}
