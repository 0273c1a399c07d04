package rundlauf.cutting.prediction;

import java.util.List;
import java.util.stream.Stream;
import rundlauf.character.SetupCharacter;
import rundlauf.character.Trait;
import rundlauf.cutting.prediction.Reading.Touched;
import rundlauf.quantity.Saying;

/** Which assumed traits touch which figure. */
final class Assumptions {
  private final SetupCharacter setup;
  private final boolean feedback;

  Assumptions(SetupCharacter setup, boolean feedback) {
    this.setup = setup;
    this.feedback = feedback;
  }

  /** What is assumed beneath a figure that rests on {@code touched}. */
  List<Saying> beneath(Touched touched) {
    return switch (touched) {
      case SETTING -> List.of();
      case FORCE -> feedback ? of(runout(), stiffness()) : of(runout());
      case BENDING -> of(runout(), stiffness());
      case POWER -> of(power());
    };
  }

  /** What is assumed beneath what a limit allows. */
  List<Saying> beneathAllowed(LimitCheck check) {
    return switch (check.code()) {
      case "power", "torque" -> of(power());
      case "speed-low" -> of(List.of(setup.slowest()));
      case "speed-high" -> of(List.of(setup.fastest(), setup.droop()));
      default -> List.of(); // what others are held against is typed
    };
  }

  private List<Trait> runout() {
    boolean angles = HeldStates.placeOpen(setup);
    return angles
        ? List.of(setup.eccentricity(), setup.firstTooth(), setup.tilt(), setup.tiltAngle())
        : List.of(setup.eccentricity(), setup.tilt());
  }

  private List<Trait> stiffness() {
    return List.of(setup.stiffnessX(), setup.stiffnessY());
  }

  private List<Trait> power() {
    return List.of(setup.power(), setup.powerAt());
  }

  @SafeVarargs
  private static List<Saying> of(List<Trait>... groups) {
    return Stream.of(groups)
        .flatMap(List::stream)
        .filter(Trait::assumed)
        .flatMap(trait -> trait.from().stream())
        .distinct()
        .toList();
  }
}
