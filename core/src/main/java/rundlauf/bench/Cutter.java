package rundlauf.bench;

import java.util.Optional;
import java.util.OptionalInt;
import rundlauf.bench.Section.Bound;
import rundlauf.quantity.Dimension;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Refused;

/**
 * A cutter.
 *
 * @param name in the bench; may be empty when it was described in a cut
 * @param kind such as end-mill
 * @param diameter over the edges
 * @param flutes how many teeth
 * @param helix negative for a left-hand helix
 * @param fluteLength length of the flutes
 * @param stickout from the nut's face to the tip, when it is always the same
 * @param shank diameter of the shank
 * @param modulus Young's modulus
 * @param strength rupture strength
 * @param edgeRadius roundness of the edge
 * @param angle included angle of a v-tool, whose {@code diameter} is that of its flat tip
 * @param maxSpeed as its maker states it
 * @param notes as given
 */
public record Cutter(
    String name,
    Optional<String> kind,
    Optional<Quantity> diameter,
    OptionalInt flutes,
    Optional<Quantity> helix,
    Optional<Quantity> fluteLength,
    Optional<Quantity> stickout,
    Optional<Quantity> shank,
    Optional<Quantity> modulus,
    Optional<Quantity> strength,
    Optional<Quantity> edgeRadius,
    Optional<Quantity> angle,
    Optional<Quantity> maxSpeed,
    Optional<String> notes) {

  private static final String[] FIELDS = {
    "name",
    "kind",
    "diameter",
    "flutes",
    "helix",
    "flute-length",
    "stickout",
    "shank",
    "modulus",
    "strength",
    "edge-radius",
    "angle",
    "max-speed",
    "notes"
  };

  /** A cutter of a bench. */
  static Cutter of(Entry entry) {
    Section s = Section.of(entry, FIELDS);
    return of(s, s.requiredText("name"));
  }

  /** A cutter described in a cut; it may have no name. */
  static Cutter inline(Entry entry) {
    Section s = Section.of(entry, FIELDS);
    return of(s, s.text("name").orElse(""));
  }

  private static Cutter of(Section s, String name) {
    return new Cutter(
        name,
        s.text("kind"),
        s.quantity("diameter", Dimension.LENGTH, Bound.POSITIVE),
        flutes(s),
        s.quantity("helix", Dimension.ANGLE, Bound.ANY),
        s.quantity("flute-length", Dimension.LENGTH, Bound.POSITIVE),
        s.quantity("stickout", Dimension.LENGTH, Bound.POSITIVE),
        s.quantity("shank", Dimension.LENGTH, Bound.POSITIVE),
        s.quantity("modulus", Dimension.PRESSURE, Bound.POSITIVE),
        s.quantity("strength", Dimension.PRESSURE, Bound.POSITIVE),
        s.quantity("edge-radius", Dimension.LENGTH, Bound.NOT_NEGATIVE),
        angle(s),
        s.quantity("max-speed", Dimension.FREQUENCY, Bound.POSITIVE),
        s.text("notes"));
  }

  private static Optional<Quantity> angle(Section s) {
    Optional<Quantity> angle = s.quantity("angle", Dimension.ANGLE, Bound.POSITIVE);
    if (angle.isPresent() && angle.get().si() + angle.get().halfWidth() >= Math.PI) {
      throw Refused.at(s.place("angle"), "cutter-angle-too-wide", s.typed("angle"));
    }
    return angle;
  }

  private static OptionalInt flutes(Section s) {
    if (!s.has("flutes")) {
      return OptionalInt.empty();
    }
    return OptionalInt.of(Section.count(Section.scalar(s.entry("flutes").orElseThrow()), 1));
  }
}
