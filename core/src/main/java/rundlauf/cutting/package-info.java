/** One state of a cut: tool, conditions, runout, stiffness and coefficients as plain SI numbers. */
@NullMarked
package rundlauf.cutting;

import org.jspecify.annotations.NullMarked;
