/** A trial understood: in SI, calibrated and checked, or refused with the place and the reason. */
@NullMarked
package rundlauf.readings;

import org.jspecify.annotations.NullMarked;
