package rundlauf.reduce.sideload;

import java.util.Optional;
import rundlauf.quantity.Drawn;

/**
 * The line of one place, pushed along one axis, with the dial at one angle.
 *
 * @param place the body touched
 * @param at where, from the nut's face [m]
 * @param push the first push's direction [rad]
 * @param dial the direction it was read along [rad]
 * @param compliance travel along the dial over force, over the cosine between push and dial [m/N]
 */
record Slope(String place, Optional<Double> at, double push, double dial, Drawn compliance) {}
