/** Runout readings in, eccentricity, swing, axis and tip out. */
@NullMarked
package rundlauf.reduce.runout;

import org.jspecify.annotations.NullMarked;
