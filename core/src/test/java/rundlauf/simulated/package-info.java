/**
 * A workshop on paper: what a bench would give if the truth were known. Every nuisance that the
 * reductions do not model is a field that can be switched on alone.
 */
@NullMarked
package rundlauf.simulated;

import org.jspecify.annotations.NullMarked;
