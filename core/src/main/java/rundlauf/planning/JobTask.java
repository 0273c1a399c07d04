package rundlauf.planning;

import java.util.OptionalDouble;
import rundlauf.bench.Job;
import rundlauf.cutting.WorkMaterial;
import rundlauf.cutting.prediction.Allowed;

/**
 * A job understood, SI.
 *
 * @param depth below the face [m]
 * @param width of the slot, the pocket or the groove; of a profile the stock beside the line [m]
 * @param length of the path, or of the pocket [m]
 * @param tolerance total width of the zone [m]
 * @param allowed what of it a cut may take; the holder's speed is not in it
 */
public record JobTask(
    Job job,
    Feature feature,
    WorkMaterial material,
    double depth,
    OptionalDouble width,
    OptionalDouble length,
    OptionalDouble tolerance,
    Allowed allowed) {
  /** The same for a holder that bears a speed of its own. */
  Allowed allowed(OptionalDouble holderSpeed) {
    return new Allowed(
        allowed.wallError(),
        allowed.cusp(),
        allowed.inPlane(),
        allowed.lift(),
        allowed.axesFeed(),
        holderSpeed);
  }
}
