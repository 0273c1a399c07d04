package rundlauf.perf;

import java.util.List;
import java.util.Optional;
import rundlauf.bench.Cut;
import rundlauf.character.EnteredCharacter;
import rundlauf.character.SetupCharacter;
import rundlauf.maths.Draws;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Unit;

/** A setup as soft one way as the other, turning 8000 to 24 000 rpm with 400 W. */
final class InventedSetup {
  private InventedSetup() {}

  /**
   * @param stiffness N/m, with a doubt of a tenth
   * @param runout m, with a doubt of 3 µm; the place of tooth 1 is open
   */
  static SetupCharacter of(double stiffness, double runout, Draws draws) {
    Optional<Quantity> round =
        Optional.of(new Quantity(stiffness, stiffness / 10, Unit.NEWTON_PER_MICROMETRE));
    Cut.SetupGiven given =
        new Cut.SetupGiven(
            Optional.of(new Quantity(runout, 3e-6, Unit.MICROMETRE)),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            round,
            round,
            Optional.of(Quantity.exact(8000 / 60.0, Unit.RPM)),
            Optional.of(Quantity.exact(24000 / 60.0, Unit.RPM)),
            Optional.of(Quantity.exact(400, Unit.WATT)),
            Optional.of(Quantity.exact(24000 / 60.0, Unit.RPM)),
            List.of());
    return EnteredCharacter.of(given, "cut", draws);
  }
}
