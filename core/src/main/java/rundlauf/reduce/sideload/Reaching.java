package rundlauf.reduce.sideload;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import rundlauf.maths.Draws;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Cause;
import rundlauf.quantity.Drawn;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Measured;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.readings.LoadReadings;
import rundlauf.readings.LoadReadings.Nose;
import rundlauf.reduce.push.Inverse;
import rundlauf.reduce.sideload.Compliances.Reach;

/**
 * The stiffness at other distances. A trial has one distance of the load, which tells nothing of
 * where the nose tips: the pivot is assumed in the middle of the clamp, p behind the nut's face.
 * What gives way behind the shank then grows as (p + load)(p + dial); the shank's own bending
 * stands apart.
 */
record Reaching(
    LoadReadings readings, Nose nose, Quantity contact, double dial, Drawn behind, Draws draws) {
  /** Distances from the nut's face [m]; our choice, where small cutters end. */
  private static final double[] AT = {0.005, 0.01, 0.02, 0.03, 0.04};

  /** Lengths of nose, over the spindle's own; our choice. */
  private static final double[] LONGER = {0.5, 0.75, 1, 1.5, 2};

  /** Why a trial tells no reach; empty when it does. */
  static Optional<Saying> why(LoadReadings readings, Figure shank, boolean onShank) {
    if (readings.nose().isEmpty()) {
      return Optional.of(Saying.of("reach-no-nose", "reach"));
    }
    if (readings.contact().isEmpty() || readings.body().isEmpty()) {
      String code = readings.contact().isEmpty() ? "side-load-no-contact" : "side-load-no-body";
      return Optional.of(Saying.of(code, "reach"));
    }
    return onShank && !shank.known()
        ? Optional.of(Saying.of("side-load-no-body", "reach"))
        : Optional.empty();
  }

  /** That the pivot is assumed, and where. */
  Saying assumption() {
    return Saying.of(
        "reach-pivot-assumed",
        "reach",
        Arg.of(nose.toMount().si(), nose.toMount().unit()),
        Arg.of(contact.si(), contact.unit()));
  }

  /** That it is assumed of noses of another length, where the reach of this one was measured. */
  Saying assumptionOfNoses() {
    return Saying.of(
        "noses-pivot-assumed", "reach", Arg.of(nose.toMount().si(), nose.toMount().unit()));
  }

  /** Load and dial together at other distances, the nose as it is. */
  List<Reach> distances() {
    return at(at -> stiffness(1, at));
  }

  /** The table of distances. */
  static List<Reach> at(DoubleFunction<Figure> stiffness) {
    List<Reach> all = new ArrayList<>();
    for (double at : AT) {
      all.add(new Reach(at, stiffness.apply(at)));
    }
    return all;
  }

  /** Load and dial where the load was, the nose shorter or longer. */
  List<Reach> noses() {
    List<Reach> all = new ArrayList<>();
    for (double longer : LONGER) {
      all.add(new Reach(longer * nose.toMount().si(), stiffness(longer, contact.si())));
    }
    return all;
  }

  /** With the pivot {@code longer} times as far, load and dial {@code at} from the face [m]. */
  private Figure stiffness(double longer, double at) {
    double between = dial - contact.si();
    Measured shank =
        ShankBending.of(
            readings.body().orElseThrow(),
            Quantity.exact(at, Unit.MILLIMETRE),
            at,
            readings.head().name());
    Drawn whole =
        Drawn.through(
            v ->
                v[0] * square(longer * v[1] + at) / ((v[1] + v[2]) * (v[1] + v[2] + between))
                    + v[3],
            Unit.MICROMETRE_PER_NEWTON,
            draws,
            behind,
            Pivot.of(nose.spindle(), nose.toMount()),
            contact.measured(Cause.rectangular(readings.head().name(), "contact")),
            shank);
    return Inverse.of(whole, "side-load-too-stiff", "reach", draws);
  }

  private static double square(double x) {
    return x * x;
  }
}
