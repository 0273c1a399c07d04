package rundlauf.character;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rundlauf.bench.Bench;
import rundlauf.bench.Cutter;
import rundlauf.bench.Setup;
import rundlauf.character.SetupCharacter.TiltOf;
import rundlauf.maths.Draws;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Saying;
import rundlauf.reduce.Reduced;
import rundlauf.reduce.runout.Runout;
import rundlauf.reduce.sideload.SideLoad;
import rundlauf.reduce.speed.Speed;
import rundlauf.safety.Inspection;
import rundlauf.safety.SetupCautions;
import rundlauf.safety.Standing;

/** A setup of a bench as its trials have it. */
public final class MeasuredCharacter {
  private MeasuredCharacter() {}

  /** What a setup is with its own cutter; see the other one. */
  public static SetupCharacter of(
      Bench bench, Setup setup, List<Reduced> results, Quantity stickout, Draws draws) {
    Optional<Cutter> own = setup.cutter().flatMap(bench::cutter);
    return of(bench, setup, own, results, stickout, draws);
  }

  /**
   * What a setup is.
   *
   * @param bench that it is of
   * @param setup of the bench
   * @param cutter that is put in, perhaps another than the setup's own
   * @param results of all trials of the bench that were reduced, with {@code draws}, in the order
   *     of their files: those of other setups count for what belongs to the spindle
   * @param stickout from the nut's face to the cutter's tip
   * @return the eccentricity of the next clamping at the tip by drawn magnitudes (a prediction),
   *     the stiffness carried to the tip, the speeds and the power to be had; whatever no trial
   *     tells is assumed, with what is assumed, or missing, with why
   * @see "docs/methods/character.md"
   */
  public static SetupCharacter of(
      Bench bench,
      Setup setup,
      Optional<Cutter> cutter,
      List<Reduced> results,
      Quantity stickout,
      Draws draws) {
    var of = new SpindleResults(bench, setup, cutter, results);
    var runout = MeasuredRunout.of(of, stickout, draws);
    var stiffness = MeasuredStiffness.of(of, stickout, draws);
    var drive = MeasuredDrive.of(of, draws);
    List<Inspection> inspections = of.allOfSpindle(Inspection.class);
    Standing standing = Standing.of(inspections);
    List<Saying> cautions = new ArrayList<>(standing.cautions(setup.spindle()));
    cautions.addAll(put(of));
    cautions.addAll(stiffness.cautions());
    return new SetupCharacter(
        setup.name(),
        runout.eccentricity(),
        FirstTooth.anywhere(setup.name(), draws),
        runout.tilt(),
        runout.tiltAngle(),
        TiltOf.HIGH_SPOT,
        stiffness.along(),
        stiffness.across(),
        drive.slowest(),
        drive.fastest(),
        drive.droop(),
        drive.power(),
        drive.powerAt(),
        Optional.of(standing),
        standing == Standing.HELD ? Standing.last(inspections).because() : List.of(),
        cautions);
  }

  /** How it is put together: the holder, its shank, its speeds, and the pin it was measured on. */
  private static List<Saying> put(SpindleResults of) {
    OptionalDouble pin =
        of.ofSetup(SideLoad.class)
            .flatMap(load -> load.readings().body())
            .map(body -> OptionalDouble.of(body.diameter().si()))
            .orElse(OptionalDouble.empty());
    OptionalDouble top =
        of.ofSpindle(Speed.class)
            .filter(speed -> speed.usableMax().known())
            .map(speed -> OptionalDouble.of(speed.usableMax().value()))
            .orElse(OptionalDouble.empty());
    List<Saying> all =
        new ArrayList<>(SetupCautions.of(of.bench(), of.setup(), of.cutter(), pin, top));
    if (of.cutter().equals(of.setup().cutter().flatMap(of.bench()::cutter))) {
      of.ofSetup(Runout.class).map(Reduced::cautions).orElse(List.of()).stream()
          .filter(saying -> saying.code().equals("pin-other-than-shank"))
          .filter(saying -> !all.contains(saying))
          .forEach(all::add);
    }
    return all;
  }
}
