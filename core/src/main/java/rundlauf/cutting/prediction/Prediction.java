package rundlauf.cutting.prediction;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rundlauf.cutting.force.ForceTurn;
import rundlauf.quantity.Saying;

/**
 * What a cut will do.
 *
 * @param task the cut
 * @param figures with the deflection fed back where it counts
 * @param rigid the rigid answer beside them, where the deflection was fed back; chip, force, torque
 *     and power only
 * @param turn forces over a turn in the central state, for the drawing; empty when the runout is
 *     not known
 * @param limits every limit that concerns the cut, judged or not
 * @param probability that all judged limits hold together, 0 to 1
 * @param assumed by the path of a figure the assumed traits that touch it
 * @param cautions what must be looked at
 * @param advice what would make it surer
 */
public record Prediction(
    CutTask task,
    CutFigures figures,
    Optional<CutFigures> rigid,
    Optional<ForceTurn> turn,
    List<Limit> limits,
    double probability,
    Map<String, List<Saying>> assumed,
    List<Saying> cautions,
    List<Saying> advice) {
  public Prediction {
    limits = List.copyOf(limits);
    assumed = Collections.unmodifiableMap(new LinkedHashMap<>(assumed));
    cautions = List.copyOf(cautions);
    advice = List.copyOf(advice);
  }

  /** Codes of the limits that the probability covers. */
  public List<String> covers() {
    return limits.stream().filter(Limit::judged).map(Limit::code).toList();
  }

  /** The same for the rigid answer, which the stiffness does not touch. */
  public Map<String, List<Saying>> assumedWhenRigid() {
    Map<String, List<Saying>> rest = new LinkedHashMap<>();
    List<Saying> soft = new ArrayList<>(task.setup().stiffnessX().from());
    soft.addAll(task.setup().stiffnessY().from());
    assumed.forEach(
        (path, beneath) -> {
          List<Saying> left = beneath.stream().filter(s -> !soft.contains(s)).toList();
          if (!left.isEmpty()) {
            rest.put(path, left);
          }
        });
    return rest;
  }
}
