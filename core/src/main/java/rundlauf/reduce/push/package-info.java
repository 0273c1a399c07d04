/**
 * Straight lines of travel over force, on a coarse dial: what every trial that pushes a nose is
 * reduced by. No reduction of its own.
 */
@NullMarked
package rundlauf.reduce.push;

import org.jspecify.annotations.NullMarked;
