package rundlauf.planning;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import rundlauf.character.SetupCharacter;
import rundlauf.cutting.CutterInUse;
import rundlauf.cutting.SpeedWindow;
import rundlauf.cutting.WorkMaterial;
import rundlauf.quantity.Quantity;

/**
 * Speeds that a cut may be turned at [turns/s].
 *
 * @param slowest that the setup surely turns at
 * @param fastest that setup, cutter, holder and material all bear; may be below {@code slowest}
 */
record SpeedRange(double slowest, double fastest) {
  /** Slowest over fastest where nobody knows the slowest; our choice. */
  private static final double WITHOUT_SLOWEST = 0.25;

  /**
   * The range; empty when nobody knows how fast the setup turns. Ends in doubt are taken at the
   * safe end of their intervals.
   */
  static Optional<SpeedRange> of(
      SetupCharacter setup, CutterInUse cutter, OptionalDouble holder, WorkMaterial material) {
    if (!setup.fastest().known()) {
      return Optional.empty();
    }
    double fastest =
        DoubleStream.of(
                setup.fastest().figure().estimate().orElseThrow().interval().low(),
                cutter.maxSpeed().map(Quantity::si).orElse(Double.POSITIVE_INFINITY),
                holder.orElse(Double.POSITIVE_INFINITY),
                material.speed().map(w -> by(w, cutter)).orElse(Double.POSITIVE_INFINITY))
            .min()
            .orElseThrow();
    double slowest =
        setup
            .slowest()
            .figure()
            .estimate()
            .map(e -> e.interval().high())
            .orElse(WITHOUT_SLOWEST * fastest);
    return Optional.of(new SpeedRange(slowest, fastest));
  }

  private static double by(SpeedWindow window, CutterInUse cutter) {
    Quantity diameter = cutter.diameter();
    return window.fastest() / (Math.PI * (diameter.si() + diameter.halfWidth()));
  }
}
