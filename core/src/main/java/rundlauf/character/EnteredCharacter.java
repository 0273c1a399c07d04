package rundlauf.character;

import java.util.List;
import java.util.Optional;
import rundlauf.bench.Cut;
import rundlauf.character.SetupCharacter.TiltOf;
import rundlauf.maths.Draws;
import rundlauf.quantity.Cause;
import rundlauf.quantity.Measured;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;

/** A setup as it was described in a cut. */
public final class EnteredCharacter {
  private final String record;

  private EnteredCharacter(String record) {
    this.record = record;
  }

  /**
   * What a described setup is. A quantity with ± is a rectangular cause of its own; one without is
   * exact.
   *
   * @param given as typed
   * @param record begins the ids of its causes, such as the cut's file
   * @param draws for the angles that were not given
   * @return offset and tilt assumed to be 0 where they were left out, their angles anywhere in the
   *     turn; whatever else was left out is missing
   * @see "docs/methods/character.md"
   */
  public static SetupCharacter of(Cut.SetupGiven given, String record, Draws draws) {
    return new EnteredCharacter(record).of(given, draws);
  }

  private SetupCharacter of(Cut.SetupGiven given, Draws draws) {
    boolean round = given.stiffnessX().equals(given.stiffnessY());
    Trait stiffnessX = stiffness(given.stiffnessX(), round ? "stiffness" : "stiffness-x");
    Trait fastest = speed(given.fastest(), "fastest");
    return new SetupCharacter(
        "",
        eccentricity(given),
        entered(given.firstTooth(), "first-tooth").orElseGet(() -> FirstTooth.anywhere("", draws)),
        tilt(given),
        tiltAngle(given, draws),
        TiltOf.FIRST_TOOTH,
        stiffnessX,
        round ? stiffnessX : stiffness(given.stiffnessY(), "stiffness-y"),
        speed(given.slowest(), "slowest"),
        fastest,
        Trait.missing(Unit.RPM_PER_WATT, Saying.of("droop-not-measured", "droop")),
        power(given),
        powerAt(given, fastest),
        Optional.empty(),
        List.of(),
        List.of());
  }

  private Optional<Trait> entered(Optional<Quantity> typed, String part) {
    return typed.map(q -> Trait.entered(q.measured(Cause.rectangular(record, part))));
  }

  private Trait eccentricity(Cut.SetupGiven given) {
    return entered(given.eccentricity(), "eccentricity")
        .orElseGet(
            () ->
                Trait.assumed(
                    Measured.exact(0, Unit.MICROMETRE),
                    Saying.of("eccentricity-assumed-zero", "eccentricity")));
  }

  private Trait tilt(Cut.SetupGiven given) {
    return entered(given.tilt(), "tilt")
        .orElseGet(
            () ->
                Trait.assumed(
                    Measured.exact(0, Unit.MICROMETRE_PER_MILLIMETRE),
                    Saying.of("tilt-assumed-zero", "tilt")));
  }

  private Trait tiltAngle(Cut.SetupGiven given, Draws draws) {
    if (given.tilt().isEmpty()) {
      return Trait.entered(Measured.exact(0, Unit.DEGREE)); // of no tilt, so any will do
    }
    return entered(given.tiltAngle(), "tilt-angle")
        .orElseGet(
            () ->
                Trait.assumed(
                    FirstTooth.anywhere(Cause.rectangular(record, "tilt-angle"), draws),
                    Saying.of("tilt-angle-anywhere", "tilt-angle")));
  }

  private Trait stiffness(Optional<Quantity> typed, String part) {
    return entered(typed, part)
        .orElseGet(
            () ->
                Trait.missing(
                    Unit.NEWTON_PER_MICROMETRE, Saying.of("stiffness-not-given", "stiffness")));
  }

  private Trait speed(Optional<Quantity> typed, String part) {
    return entered(typed, part)
        .orElseGet(() -> Trait.missing(Unit.RPM, Saying.of("speed-not-given", part)));
  }

  private Trait power(Cut.SetupGiven given) {
    return entered(given.power(), "power")
        .orElseGet(() -> Trait.missing(Unit.WATT, Saying.of("power-not-given", "power")));
  }

  /**
   * At the fastest speed where nothing else was said: reading a cut sees to it that it is there.
   */
  private Trait powerAt(Cut.SetupGiven given, Trait fastest) {
    if (given.power().isEmpty()) {
      return Trait.missing(Unit.RPM, Saying.of("power-not-given", "power-at"));
    }
    return entered(given.powerAt(), "power-at")
        .orElseGet(
            () -> Trait.assumed(fastest.figure(), Saying.of("power-at-fastest", "power-at")));
  }
}
