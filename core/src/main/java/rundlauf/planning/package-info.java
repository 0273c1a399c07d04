/** Limits of a cut, their probabilities, and the choice. */
@NullMarked
package rundlauf.planning;

import org.jspecify.annotations.NullMarked;
