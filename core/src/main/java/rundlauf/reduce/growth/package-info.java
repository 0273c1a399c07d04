/** Readings of a nose that grows as its spindle warms, and what they tell. */
@NullMarked
package rundlauf.reduce.growth;

import org.jspecify.annotations.NullMarked;
