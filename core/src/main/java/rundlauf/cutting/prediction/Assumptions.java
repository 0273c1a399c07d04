package rundlauf.cutting.prediction;

import java.util.ArrayList;
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

  /** What is assumed beneath a limit: its value, and what it is held against. */
  List<Saying> beneath(LimitCheck check) {
    List<Saying> all = new ArrayList<>(beneath(check.touched()));
    switch (check.code()) {
      case "power", "torque" -> all.addAll(of(power()));
      case "speed-low" -> all.addAll(of(List.of(setup.slowest())));
      case "speed-high" -> all.addAll(of(List.of(setup.fastest(), setup.droop())));
      default -> {
        // what others are held against is typed
      }
    }
    return all.stream().distinct().toList();
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
