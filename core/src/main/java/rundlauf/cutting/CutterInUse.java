package rundlauf.cutting;

import java.util.Optional;
import rundlauf.quantity.Quantity;

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
    Optional<Quantity> maxSpeed) {}
