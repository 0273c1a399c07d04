/** Forces over a revolution, rigid and with the deflection fed back. */
@NullMarked
package rundlauf.cutting.force;

import org.jspecify.annotations.NullMarked;
