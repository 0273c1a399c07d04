/** The inspection list, and whether a spindle is held. */
@NullMarked
package rundlauf.safety;

import org.jspecify.annotations.NullMarked;
