package rundlauf.planning;

import java.util.Optional;
import rundlauf.bench.Cutter;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;

/** Whether a cutter can do a job at all. */
final class CutterChecks {
  /** Widths closer than this, relatively, are the same; our choice: 10 µm of a 1 mm slot. */
  static final double SAME_WIDTH = 0.01;

  /** Lengths closer than this, relatively, are the same in whatever unit they were typed. */
  private static final double ROUNDING = 1e-6;

  static final String V_TOOL = "v-tool";
  private static final String DRILL = "drill";

  private CutterChecks() {}

  /**
   * Why not.
   *
   * @param field of the job that it fails at
   */
  record Unfit(String field, Saying why) {}

  static Optional<Unfit> unfit(JobTask task, Cutter cutter) {
    if (task.feature() == Feature.DRILL) {
      return Optional.empty();
    }
    return kind(task, cutter).or(() -> width(task, cutter)).or(() -> depth(task, cutter));
  }

  private static Optional<Unfit> kind(JobTask task, Cutter cutter) {
    String kind = cutter.kind().orElse("");
    if (task.feature() == Feature.ENGRAVE) {
      if (!kind.equals(V_TOOL)) {
        return unfit("cutter", Saying.of("engrave-without-v-tool", "cutter", name(cutter)));
      }
      return cutter.angle().isPresent()
          ? Optional.empty()
          : unfit("cutter", Saying.of("v-tool-without-angle", "cutter", name(cutter)));
    }
    return kind.equals(V_TOOL) || kind.equals(DRILL)
        ? unfit(
            "cutter",
            Saying.of(
                "cutter-kind-not-for-feature",
                "cutter",
                name(cutter),
                Arg.of(kind),
                Arg.of(task.feature().code())))
        : Optional.empty();
  }

  private static Optional<Unfit> width(JobTask task, Cutter cutter) {
    boolean between = task.feature() == Feature.SLOT || task.feature() == Feature.POCKET;
    if (!between || task.width().isEmpty() || cutter.diameter().isEmpty()) {
      return Optional.empty();
    }
    Quantity diameter = cutter.diameter().get();
    double width = task.width().getAsDouble();
    return width < diameter.si() * (1 - SAME_WIDTH)
        ? unfit(
            "width",
            Saying.of("job-narrower-than-cutter", "width", mm(width), name(cutter), mm(diameter)))
        : Optional.empty();
  }

  private static Optional<Unfit> depth(JobTask task, Cutter cutter) {
    return cutter
        .fluteLength()
        .filter(flutes -> task.depth() > flutes.si() * (1 + ROUNDING))
        .flatMap(
            flutes ->
                unfit(
                    "depth",
                    Saying.of(
                        "job-deeper-than-flutes",
                        "depth",
                        mm(task.depth()),
                        name(cutter),
                        mm(flutes))));
  }

  private static Optional<Unfit> unfit(String field, Saying why) {
    return Optional.of(new Unfit(field, why));
  }

  private static Arg name(Cutter cutter) {
    return Arg.of(cutter.name());
  }

  private static Arg mm(Quantity quantity) {
    return Arg.of(quantity.si(), quantity.unit());
  }

  private static Arg mm(double si) {
    return Arg.of(si, Unit.MILLIMETRE);
  }
}
