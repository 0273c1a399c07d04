package rundlauf.cutting.prediction;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import rundlauf.cutting.prediction.LimitCheck.Missing;
import rundlauf.cutting.prediction.Reading.Touched;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;

/** The limits that concern a cut, those that cost least to check first. */
final class LimitChecks {
  private final CutTask task;
  private final Optional<Saying> restless;
  private final List<LimitCheck> all = new ArrayList<>();

  private LimitChecks(CutTask task, Optional<Saying> restless) {
    this.task = task;
    this.restless = restless;
  }

  /**
   * All limits.
   *
   * @param restless why the deflection could not be fed back though it counts
   */
  static List<LimitCheck> of(CutTask task, Optional<Saying> restless) {
    var checks = new LimitChecks(task, restless);
    checks.speeds();
    checks.chips();
    checks.forces();
    checks.bending();
    return checks.all;
  }

  private void speeds() {
    ToDoubleFunction<CutOutcome> speed = o -> o.state().cut().speed();
    asked(
        "axes-feed", Unit.MILLIMETRE_PER_MINUTE, task.allowed().axesFeed(), o -> o.state().feed());
    task.cutter()
        .maxSpeed()
        .ifPresent(q -> asked("cutter-speed", Unit.RPM, OptionalDouble.of(q.si()), speed));
    asked("holder-speed", Unit.RPM, task.allowed().holderSpeed(), speed);
    task.material()
        .speed()
        .ifPresent(
            window ->
                asked(
                    "cutting-speed",
                    Unit.METRE_PER_MINUTE,
                    OptionalDouble.of(window.fastest()),
                    o -> o.state().cuttingSpeed()));
    add(
        new LimitCheck(
            "speed-low",
            Unit.RPM,
            Touched.SETTING,
            unknown(task.setup().slowest()),
            speed,
            o -> o.state().held().setup().slowest()));
    boolean droops = task.setup().droop().central(0) > 0;
    add(
        new LimitCheck(
            "speed-high",
            Unit.RPM,
            droops ? Touched.FORCE : Touched.SETTING,
            unknown(task.setup().fastest()),
            speed,
            o -> o.fastestUnderLoad()));
  }

  private void chips() {
    task.material()
        .chip()
        .ifPresent(
            chip ->
                add(
                    new LimitCheck(
                        "chip-thickest",
                        Unit.MICROMETRE,
                        Touched.FORCE,
                        runout(),
                        CutOutcome::thickestChip,
                        o -> chip.at(o.state().held().tool().diameter()))));
    Optional<Missing> noEdge =
        task.cutter().edgeRadius().isPresent()
            ? Optional.empty()
            : Optional.of(
                new Missing(false, Saying.of("cutter-edge-radius-not-given", "chip-thinnest")));
    add(
        new LimitCheck(
            "chip-thinnest",
            Unit.MICROMETRE,
            Touched.FORCE,
            runout().or(() -> noEdge),
            CutOutcome::thinnestWorkingChip,
            o -> o.state().held().smallestChip() * o.state().held().edgeRadius()));
  }

  private void forces() {
    Optional<Missing> noPower = runout().or(() -> unknown(task.setup().power()));
    add(
        new LimitCheck(
            "power",
            Unit.WATT,
            Touched.FORCE,
            noPower,
            CutOutcome::power,
            o -> o.state().availablePower()));
    add(
        new LimitCheck(
            "torque",
            Unit.NEWTON_METRE,
            Touched.FORCE,
            noPower,
            o -> o.turn().torque().mean(),
            CutOutcome::availableTorque));
    forceAsked("holding-in-plane", task.allowed().inPlane(), runout(), CutOutcome::lateralPeak);
    Optional<Missing> noAxial =
        runout().or(() -> task.material().axialUnknown().map(why -> new Missing(true, why)));
    forceAsked("holding-lift", task.allowed().lift(), noAxial, CutOutcome::pull);
  }

  private void bending() {
    Optional<Missing> noStrength =
        task.cutter().strength().isPresent()
            ? Optional.empty()
            : Optional.of(new Missing(false, Saying.of("cutter-strength-not-given", "stress")));
    add(
        new LimitCheck(
            "stress",
            Unit.MEGAPASCAL,
            Touched.FORCE,
            runout().or(() -> noStrength),
            o -> o.bend().stress().peak(),
            o -> o.state().held().strength()));
    wall();
  }

  /** What the job asks of the wall. */
  private void wall() {
    task.allowed()
        .wallError()
        .ifPresent(
            allowed ->
                add(
                    new LimitCheck(
                        "wall-error",
                        Unit.MICROMETRE,
                        Touched.BENDING,
                        CutReadings.bendingMissing(task)
                            .or(() -> restless)
                            .map(why -> new Missing(true, why)),
                        o -> Math.abs(o.bend().walls().largest()),
                        o -> allowed)));
    task.allowed()
        .cusp()
        .ifPresent(
            allowed ->
                add(
                    new LimitCheck(
                        "finish",
                        Unit.MICROMETRE,
                        Touched.FORCE,
                        runout(),
                        CutOutcome::cusp,
                        o -> allowed)));
  }

  /** Kept when something is asked and the value, which rests on the setting alone, is known. */
  private void asked(
      String code, Unit unit, OptionalDouble most, ToDoubleFunction<CutOutcome> value) {
    most.ifPresent(
        allowed ->
            add(
                new LimitCheck(
                    code, unit, Touched.SETTING, Optional.empty(), value, o -> allowed)));
  }

  private void forceAsked(
      String code,
      OptionalDouble most,
      Optional<Missing> missing,
      ToDoubleFunction<CutOutcome> value) {
    most.ifPresent(
        allowed ->
            add(new LimitCheck(code, Unit.NEWTON, Touched.FORCE, missing, value, o -> allowed)));
  }

  private Optional<Missing> runout() {
    return CutReadings.why(task.setup().eccentricity()).map(why -> new Missing(true, why));
  }

  private static Optional<Missing> unknown(rundlauf.character.Trait trait) {
    return CutReadings.why(trait).map(why -> new Missing(false, why));
  }

  private void add(LimitCheck check) {
    all.add(check);
  }
}
