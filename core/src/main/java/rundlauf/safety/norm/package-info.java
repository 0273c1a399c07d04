/** What norms ask of holders and spindles, and whether it is proven. */
@NullMarked
package rundlauf.safety.norm;

import org.jspecify.annotations.NullMarked;
