package rundlauf.cutting;

import java.util.Optional;
import rundlauf.bench.Cutter;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Refused;

/**
 * A cutter as it is held, with the doubt of what was typed of it.
 *
 * @param name in the bench; empty when it was described in a cut
 * @param kind such as end-mill; empty when not said
 * @param diameter over the edges
 * @param teeth how many
 * @param helix negative for a left-hand helix
 * @param fluteLength from the tip, at most {@code stickout}
 * @param stickout from the nut's face to the tip
 * @param shank diameter of the shank
 * @param modulus Young's modulus
 * @param strength rupture strength
 * @param edgeRadius roundness of the edge
 * @param maxSpeed as its maker states it
 */
public record CutterInUse(
    String name,
    Optional<String> kind,
    Quantity diameter,
    int teeth,
    Quantity helix,
    Quantity fluteLength,
    Quantity stickout,
    Quantity shank,
    Quantity modulus,
    Optional<Quantity> strength,
    Optional<Quantity> edgeRadius,
    Optional<Quantity> maxSpeed) {
  /** Steepest helix that a cutter is taken for; our choice, well above any that is made. */
  private static final double STEEPEST = Math.toRadians(80);

  /**
   * A cutter of which everything is known that its forces and bending need.
   *
   * @param cutter as typed
   * @param stickout as it is held; empty: the cutter's own
   * @param place where it was typed
   * @throws Refused for what is not given, and for what no cutter can be
   */
  public static CutterInUse of(Cutter cutter, Optional<Quantity> stickout, Place place) {
    Quantity held = need(stickout.or(cutter::stickout), "stickout", place);
    CutterInUse used =
        new CutterInUse(
            cutter.name(),
            cutter.kind(),
            need(cutter.diameter(), "diameter", place),
            cutter.flutes().orElseThrow(() -> missing("flutes", place)),
            need(cutter.helix(), "helix", place),
            need(cutter.fluteLength(), "flute-length", place),
            held,
            need(cutter.shank(), "shank", place),
            need(cutter.modulus(), "modulus", place),
            cutter.strength(),
            cutter.edgeRadius(),
            cutter.maxSpeed());
    if (used.fluteLength.si() > held.si()) {
      throw Refused.at(place, "flutes-beyond-stickout", printed(used.fluteLength), printed(held));
    }
    if (Math.abs(used.helix.si()) > STEEPEST) {
      throw Refused.at(place, "helix-too-steep", printed(used.helix));
    }
    return used;
  }

  private static Quantity need(Optional<Quantity> typed, String field, Place place) {
    return typed.orElseThrow(() -> missing(field, place));
  }

  private static Refused missing(String field, Place place) {
    String path = place.field().isEmpty() ? field : place.field() + "." + field;
    return Refused.at(place.field(path), "cutter-field-missing", Arg.of(field));
  }

  private static Arg printed(Quantity quantity) {
    return Arg.of(quantity.si(), quantity.unit());
  }
}
