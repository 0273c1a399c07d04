/** The choice of a cut for a job, setup by setup, and its reason. */
@NullMarked
package rundlauf.planning;

import org.jspecify.annotations.NullMarked;
