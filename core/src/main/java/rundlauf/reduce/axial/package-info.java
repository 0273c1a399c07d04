/** Readings of a nose pushed toward its housing and pulled away from it, and what they tell. */
@NullMarked
package rundlauf.reduce.axial;

import org.jspecify.annotations.NullMarked;
