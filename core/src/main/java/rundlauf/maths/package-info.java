/**
 * Numbers only: samples, seeded streams, least squares, distributions, the coarse-scale posterior
 * and {@code Work}.
 */
@NullMarked
package rundlauf.maths;

import org.jspecify.annotations.NullMarked;
