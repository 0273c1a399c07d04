/** Side-load readings in, stiffness, play and hysteresis out. */
@NullMarked
package rundlauf.reduce.sideload;

import org.jspecify.annotations.NullMarked;
