package rundlauf.reduce.runout;

import java.util.List;
import java.util.Optional;
import rundlauf.quantity.DrawnVector;

/**
 * How the shank stood in each clamping.
 *
 * @param offsets E at {@code nextClamping.at}, one a clamping; none where only swings were read
 * @param tilts T, one for each of them; none where one station cannot tell
 * @param stations E at one station, of more clampings than bear a tilt, for their scatter; none:
 *     {@code offsets}
 * @param scatter sd of one component between clampings [m], draw by draw, where clampings of other
 *     clock angles tell it and these do not
 */
public record Clamped(
    List<DrawnVector> offsets,
    List<DrawnVector> tilts,
    List<DrawnVector> stations,
    Optional<ClampingScatter> scatter) {
  /** Where other clampings tell nothing. */
  public Clamped(List<DrawnVector> offsets, List<DrawnVector> tilts, List<DrawnVector> stations) {
    this(offsets, tilts, stations, Optional.empty());
  }

  /** The same with the scatter that clampings of other clock angles tell. */
  Clamped withScatter(ClampingScatter told) {
    return new Clamped(offsets, tilts, stations, Optional.of(told));
  }

  public Clamped {
    offsets = List.copyOf(offsets);
    tilts = List.copyOf(tilts);
    stations = List.copyOf(stations);
  }
}
