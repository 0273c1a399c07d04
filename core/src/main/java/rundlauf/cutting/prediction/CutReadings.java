package rundlauf.cutting.prediction;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import rundlauf.character.Trait;
import rundlauf.cutting.Operation;
import rundlauf.cutting.force.ForceTurn;
import rundlauf.cutting.prediction.Reading.Touched;
import rundlauf.maths.Samples;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;

/** Every figure of a cut, in the order of the output. */
final class CutReadings {
  private final CutTask task;
  private final Optional<Saying> restless;
  private final List<Reading> all = new ArrayList<>();

  private CutReadings(CutTask task, Optional<Saying> restless) {
    this.task = task;
    this.restless = restless;
  }

  /**
   * All figures.
   *
   * @param restless why the deflection could not be fed back though it counts
   */
  static List<Reading> of(CutTask task, Optional<Saying> restless) {
    var readings = new CutReadings(task, restless);
    readings.chip();
    readings.kinematics();
    readings.force();
    readings.power();
    readings.bending();
    readings.stability();
    return readings.all;
  }

  /** Those that the deflection changes when it is fed back. */
  static List<Reading> rigid(CutTask task) {
    var readings = new CutReadings(task, Optional.empty());
    readings.chip();
    readings.force();
    return readings.all.stream().filter(r -> !r.path().equals("force.unbalance")).toList();
  }

  /** What one tooth takes. */
  static List<Reading> tooth(CutTask task, int tooth) {
    var readings = new CutReadings(task, Optional.empty());
    String at = "chip.perTooth[" + (tooth - 1) + "].";
    readings.add(at + "peak", Unit.MICROMETRE, load(tooth, ForceTurn.ToothLoad::peak));
    readings.add(at + "share", Unit.ONE, load(tooth, ForceTurn.ToothLoad::share));
    return readings.all;
  }

  private static ToDoubleFunction<CutOutcome> load(
      int tooth, ToDoubleFunction<ForceTurn.ToothLoad> of) {
    return o -> of.applyAsDouble(o.turn().teeth().get(tooth - 1));
  }

  private void chip() {
    add("chip.teethCutting", Unit.ONE, CutOutcome::teethCutting);
    add("chip.effectiveDiameter", Unit.MILLIMETRE, CutOutcome::effectiveDiameter);
  }

  private void kinematics() {
    setting("kinematics.cuttingSpeed", Unit.METRE_PER_MINUTE, CutState::cuttingSpeed);
    setting("kinematics.feed", Unit.MILLIMETRE_PER_MINUTE, CutState::feed);
    setting("kinematics.removalRate", Unit.CUBIC_MILLIMETRE_PER_MINUTE, CutState::removalRate);
  }

  private void force() {
    add("force.mean.x", Unit.NEWTON, o -> o.turn().x().mean());
    add("force.mean.y", Unit.NEWTON, o -> o.turn().y().mean());
    axial("force.mean.z", o -> o.turn().z().mean());
    add("force.peak.x", Unit.NEWTON, o -> largest(o, ForceTurn::x));
    add("force.peak.y", Unit.NEWTON, o -> largest(o, ForceTurn::y));
    axial("force.peak.z", o -> largest(o, ForceTurn::z));
    add("force.peak.lateral", Unit.NEWTON, CutOutcome::lateralPeak);
    add("force.unbalance", Unit.NEWTON, CutOutcome::unbalance);
    add("torque.mean", Unit.NEWTON_METRE, o -> o.turn().torque().mean());
    add("torque.peak", Unit.NEWTON_METRE, o -> o.turn().torque().max());
    add("power.cutting", Unit.WATT, CutOutcome::power);
  }

  /** Its size, whichever way it points. */
  private static double largest(CutOutcome outcome, Function<ForceTurn, Samples> of) {
    Samples force = of.apply(outcome.turn());
    return Math.max(force.max(), -force.min());
  }

  private void power() {
    Trait power = task.setup().power();
    all.add(
        new Reading(
            "power.available",
            Unit.WATT,
            Touched.POWER,
            why(power),
            o -> o.state().availablePower()));
  }

  private void bending() {
    add("deflection.cutter", Unit.MICROMETRE, o -> o.bend().tip().cutter());
    bent("deflection.setup", o -> o.bend().tip().setup());
    if (task.cut().operation() == Operation.SLOT) {
      bent("deflection.wallError.plusY", CutOutcome::plusY);
      bent("deflection.wallError.minusY", CutOutcome::minusY);
    } else {
      bent("deflection.wallError", o -> o.bend().walls().largest());
    }
    add("stress.peak", Unit.MEGAPASCAL, o -> o.bend().stress().peak());
    Optional<Saying> noStrength =
        task.cutter().strength().isPresent()
            ? Optional.empty()
            : Optional.of(Saying.of("cutter-strength-not-given", "stress.allowed"));
    all.add(
        new Reading(
            "stress.allowed",
            Unit.MEGAPASCAL,
            Touched.SETTING,
            noStrength,
            o -> o.state().held().strength()));
    add("surface.cusp", Unit.MICROMETRE, CutOutcome::cusp);
  }

  private void stability() {
    Optional<Saying> why = Optional.of(Saying.of("chatter-not-examined", "stability"));
    all.add(new Reading("stability.limit", Unit.MILLIMETRE, Touched.SETTING, why, o -> 0));
    all.add(new Reading("stability.probabilityStable", Unit.ONE, Touched.SETTING, why, o -> 0));
    all.add(new Reading("stability.chatter", Unit.HERTZ, Touched.SETTING, why, o -> 0));
  }

  private void add(String path, Unit unit, ToDoubleFunction<CutOutcome> of) {
    all.add(new Reading(path, unit, Touched.FORCE, why(task.setup().eccentricity()), of));
  }

  private void setting(String path, Unit unit, ToDoubleFunction<CutState> of) {
    all.add(
        new Reading(
            path, unit, Touched.SETTING, Optional.empty(), o -> of.applyAsDouble(o.state())));
  }

  private void axial(String path, ToDoubleFunction<CutOutcome> of) {
    Optional<Saying> why =
        why(task.setup().eccentricity()).or(() -> task.material().axialUnknown());
    all.add(new Reading(path, Unit.NEWTON, Touched.FORCE, why, of));
  }

  private void bent(String path, ToDoubleFunction<CutOutcome> of) {
    all.add(
        new Reading(
            path, Unit.MICROMETRE, Touched.BENDING, bendingMissing(task).or(() -> restless), of));
  }

  /** Why the setup's giving way cannot be told; empty when it can. */
  static Optional<Saying> bendingMissing(CutTask task) {
    return why(task.setup().eccentricity())
        .or(() -> why(task.setup().stiffnessX()))
        .or(() -> why(task.setup().stiffnessY()));
  }

  static Optional<Saying> why(Trait trait) {
    return trait.figure() instanceof Missing missing
        ? Optional.of(missing.why())
        : Optional.empty();
  }
}
