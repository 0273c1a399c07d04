package rundlauf.character;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rundlauf.character.SetupCharacter.TiltOf;
import rundlauf.maths.Draws;
import rundlauf.quantity.Cause;
import rundlauf.quantity.Measured;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;

class SetupStateLawTest {
  private static final Draws DRAWS = new Draws(3, 300);
  private static final Cause DIAL = Cause.normal("dial", "made");

  private static SetupCharacter setup(TiltOf tiltOf, double firstTooth, double tiltAngle) {
    Saying none = Saying.of("made-missing", "");
    Trait missing = Trait.missing(Unit.WATT, none);
    return new SetupCharacter(
        "made",
        Trait.measured(Measured.exact(10e-6, Unit.MICROMETRE).with(DIAL, 2e-6)),
        Trait.entered(Measured.exact(firstTooth, Unit.DEGREE)),
        Trait.entered(Measured.exact(1e-4, Unit.MICROMETRE_PER_MILLIMETRE)),
        Trait.entered(Measured.exact(tiltAngle, Unit.DEGREE)),
        tiltOf,
        Trait.measured(Measured.exact(1e6, Unit.NEWTON_PER_MICROMETRE).with(DIAL, -1e5)),
        missing,
        missing,
        missing,
        missing,
        missing,
        missing,
        Optional.empty(),
        List.of(),
        List.of());
  }

  @Test
  void aToothStandsAheadOfTheTiltByWhatItAndTheHighSpotDoTogether() {
    SetupState ofSpot = setup(TiltOf.HIGH_SPOT, 0.3, 0.5).states(DRAWS, 1).get(0);
    assertThat(ofSpot.firstTooth()).isEqualTo(0.3);
    assertThat(ofSpot.tiltAngle()).isCloseTo(0.8, within(1e-12));
    SetupState ofTooth = setup(TiltOf.FIRST_TOOTH, 0.3, 0.5).states(DRAWS, 1).get(0);
    assertThat(ofTooth.tiltAngle()).isEqualTo(0.5);
    assertThat(setup(TiltOf.HIGH_SPOT, 0.3, 0.5).central(1.1).tiltAngle())
        .isCloseTo(1.6, within(1e-12));
  }

  @Test
  void traitsOfOneCauseMoveTogether() {
    for (SetupState state : setup(TiltOf.FIRST_TOOTH, 0, 0).states(DRAWS, 100)) {
      double z = (state.eccentricity() - 10e-6) / 2e-6;
      assertThat(state.stiffnessX()).isCloseTo(1e6 - 1e5 * z, within(1e-3));
    }
  }

  @Test
  void whatIsNotKnownIsNoLimit() {
    SetupState state = setup(TiltOf.FIRST_TOOTH, 0, 0).states(DRAWS, 1).get(0);
    assertThat(state.stiffnessY()).isInfinite();
    assertThat(state.fastest()).isInfinite();
    assertThat(state.slowest()).isEqualTo(0);
    assertThat(state.powerAt(100)).isInfinite();
  }
}
