package rundlauf.cutting;

import java.util.List;
import java.util.Optional;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Saying;

/**
 * A material understood: what it asks of the cutter.
 *
 * @param name as typed or in the library
 * @param coefficients central
 * @param doubt of the coefficients
 * @param status how well the coefficients are known
 * @param source code of where the coefficients stand; its words are {@code term.CODE}
 * @param speed cutting speeds it bears; empty when nothing is known
 * @param chip largest chip advised; empty when nothing is known
 * @param smallestChip thinnest chip that an edge lifts
 * @param cautions what must be said wherever its figures are used
 */
public record WorkMaterial(
    String name,
    Coefficients coefficients,
    CoefficientDoubt doubt,
    Status status,
    String source,
    Optional<SpeedWindow> speed,
    Optional<LargestChip> chip,
    SmallestChip smallestChip,
    List<Saying> cautions) {
  public WorkMaterial {
    cautions = List.copyOf(cautions);
  }

  /** Why z forces cannot be had; empty when they can. */
  public Optional<Saying> axialUnknown() {
    return coefficients.axialKnown()
        ? Optional.empty()
        : Optional.of(Saying.of("axial-coefficients-unknown", "force", Arg.of(name)));
  }

  /** The same with windows of the user's own where they are given. */
  WorkMaterial within(Optional<SpeedWindow> ownSpeed, Optional<LargestChip> ownChip) {
    return new WorkMaterial(
        name,
        coefficients,
        doubt,
        status,
        source,
        ownSpeed.or(() -> speed),
        ownChip.or(() -> chip),
        smallestChip,
        cautions);
  }
}
