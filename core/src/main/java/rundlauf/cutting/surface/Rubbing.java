package rundlauf.cutting.surface;

import java.util.Optional;
import java.util.OptionalDouble;
import rundlauf.cutting.SmallestChip;
import rundlauf.cutting.force.ForceTurn;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;

/** Whether every tooth that cuts takes a chip its edge can lift. */
public enum Rubbing {
  /** The thinnest working chip is below the least of what is published: the tooth rubs. */
  RUBS,
  /** It lies within the range published. */
  MAY_RUB,
  /** It is above the range. */
  CUTS;

  /**
   * Thinnest working chip: the least of the thickest chips of the teeth that cut.
   *
   * @return [m]; empty when none cuts
   */
  public static OptionalDouble thinnestWorkingChip(ForceTurn turn) {
    return turn.teeth().stream()
        .mapToDouble(ForceTurn.ToothLoad::peak)
        .filter(peak -> peak > 0)
        .min();
  }

  /**
   * Judges a chip.
   *
   * @param chip thinnest working chip [m], 0 or more
   * @param edgeRadius of the cutting edge [m], 0 or more
   * @param smallest chip that the material takes, over the edge radius
   * @see "docs/methods/surface.md"
   */
  public static Rubbing of(double chip, double edgeRadius, SmallestChip smallest) {
    if (chip < smallest.low() * edgeRadius) {
      return RUBS;
    }
    return chip < smallest.high() * edgeRadius ? MAY_RUB : CUTS;
  }

  /** What must be said of a chip; empty when every tooth cuts. */
  public static Optional<Saying> said(double chip, double edgeRadius, SmallestChip smallest) {
    Arg thinnest = Arg.of(chip, Unit.MICROMETRE);
    Arg edge = Arg.of(edgeRadius, Unit.MICROMETRE);
    Arg low = Arg.of(smallest.low() * edgeRadius, Unit.MICROMETRE);
    Arg high = Arg.of(smallest.high() * edgeRadius, Unit.MICROMETRE);
    return switch (of(chip, edgeRadius, smallest)) {
      case RUBS -> Optional.of(Saying.of("edge-rubs", "chip", thinnest, edge, low));
      case MAY_RUB -> Optional.of(Saying.of("edge-may-rub", "chip", thinnest, edge, low, high));
      case CUTS -> Optional.empty();
    };
  }
}
