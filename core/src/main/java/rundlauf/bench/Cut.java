package rundlauf.bench;

import java.util.List;
import java.util.Optional;
import rundlauf.quantity.Place;
import rundlauf.quantity.Quantity;

/**
 * A cut as typed.
 *
 * @param file as the user named it
 * @param title as given
 * @param material a name from the library or the bench, or its own coefficients
 * @param cutter what cuts; empty: the setup's own
 * @param setup what holds it
 * @param operation slot, side-up, side-down
 * @param speed of the spindle
 * @param feed by tooth or by time
 * @param axial depth along the axis
 * @param radial width across it; empty for a slot, where it is the diameter
 * @param document all that was typed, for its places
 */
public record Cut(
    String file,
    Optional<String> title,
    Entry material,
    Optional<CutterTyped> cutter,
    SetupTyped setup,
    String operation,
    Quantity speed,
    Feed feed,
    Quantity axial,
    Optional<Quantity> radial,
    Entry.Fields document) {

  /** What was typed under {@code cutter}. */
  public sealed interface CutterTyped {}

  /** A cutter described in the cut. */
  public record CutterGiven(Cutter cutter) implements CutterTyped {}

  /** A cutter of the setup's bench, by its name. */
  public record CutterNamed(String name) implements CutterTyped {}

  /** What was typed under {@code setup}. */
  public sealed interface SetupTyped {}

  /** A setup of a bench: the folder as typed, and its name. */
  public record SetupNamed(String bench, String name) implements SetupTyped {}

  /**
   * A setup described in the cut; whatever was not given is empty.
   *
   * @param stiffnessX at the tip along the feed, without the cutter's own bending
   * @param stiffnessY across it
   * @param modes as tapped or known otherwise; kept for the stability of the cut
   */
  public record SetupGiven(
      Optional<Quantity> eccentricity,
      Optional<Quantity> firstTooth,
      Optional<Quantity> tilt,
      Optional<Quantity> tiltAngle,
      Optional<Quantity> stiffnessX,
      Optional<Quantity> stiffnessY,
      Optional<Quantity> slowest,
      Optional<Quantity> fastest,
      Optional<Quantity> power,
      Optional<Quantity> powerAt,
      List<Mode> modes)
      implements SetupTyped {
    public SetupGiven {
      modes = List.copyOf(modes);
    }
  }

  /**
   * One way in which the setup rings.
   *
   * @param frequency natural, undamped
   * @param damping ratio, over 0 and under 1
   * @param stiffness modal
   * @param direction x along the feed, y across it
   */
  public record Mode(Quantity frequency, Quantity damping, Quantity stiffness, String direction) {}

  /** How fast the work is fed. */
  public sealed interface Feed {}

  /** By tooth. */
  public record FeedPerTooth(Quantity length) implements Feed {}

  /** By time. */
  public record FeedRate(Quantity velocity) implements Feed {}

  /**
   * The cut of a document.
   *
   * @param file as the user named it
   * @throws rundlauf.quantity.Refused for whatever is missing, unknown, of another kind or said
   *     twice
   */
  public static Cut of(String file, Entry.Fields document) {
    return CutReader.read(file, document);
  }

  /** Where a field stands, such as {@code axial}; where it is missing, where it should. */
  public Place place(String field) {
    return document.get(field).map(Entry::place).orElseGet(() -> document.place().field(field));
  }
}
