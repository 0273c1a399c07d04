/** Speed readings in, the speed curve, its inverse and its usable range out. */
@NullMarked
package rundlauf.reduce.speed;

import org.jspecify.annotations.NullMarked;
