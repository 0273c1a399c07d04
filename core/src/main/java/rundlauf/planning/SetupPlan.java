package rundlauf.planning;

import java.util.List;
import java.util.Optional;
import rundlauf.character.SetupCharacter;
import rundlauf.cutting.prediction.Limit;
import rundlauf.cutting.prediction.Prediction;
import rundlauf.quantity.Saying;
import rundlauf.safety.Standing;

/**
 * A job on one setup.
 *
 * @param setup its name in the bench
 * @param cutter the cutter chosen; empty when none of the job's fits
 * @param character what the setup is with that cutter; empty when none fits
 * @param best the best cut that keeps every limit, or else the nearest miss; empty when nothing
 *     could be tried
 * @param feasible whether every limit holds together with the probability asked
 * @param time to remove the job's material [s], without travel outside the work; empty with the cut
 * @param passes how the feature is taken, such as five passes of 0.2 mm
 * @param boundBy the limit that stands in the way of more; of a miss, the one that fails
 * @param because why nothing could be tried, or why it is held
 * @param cautions what must be looked at
 */
public record SetupPlan(
    String setup,
    Optional<String> cutter,
    Optional<SetupCharacter> character,
    Optional<Prediction> best,
    boolean feasible,
    Optional<Double> time,
    Optional<Passes> passes,
    Optional<Limit> boundBy,
    Standing standing,
    List<Saying> because,
    List<Saying> cautions) {
  /**
   * How a feature is taken.
   *
   * @param deep passes one below the other
   * @param wide passes side by side
   */
  public record Passes(int deep, int wide) {}

  public SetupPlan {
    because = List.copyOf(because);
    cautions = List.copyOf(cautions);
  }

  public boolean held() {
    return standing == Standing.HELD;
  }

  /** To cut the feature [s/m]; of a plan with a cut. */
  double secondsPerMetre() {
    Passes taken = passes.orElseThrow();
    double feed = best.orElseThrow().figures().at("kinematics.feed").value();
    return taken.deep() * taken.wide() / feed;
  }

  /** Feasible, inspected and not held. */
  public boolean recommended() {
    return feasible && standing == Standing.INSPECTED;
  }
}
