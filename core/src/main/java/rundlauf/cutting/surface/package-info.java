/**
 * What the cutter leaves behind and what else it bears: marks, grooves, rubbing, unbalance, pull.
 */
@NullMarked
package rundlauf.cutting.surface;

import org.jspecify.annotations.NullMarked;
