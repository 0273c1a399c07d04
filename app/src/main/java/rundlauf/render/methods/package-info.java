/** The pages that tell how figures are made, as a browser shows them. */
@NullMarked
package rundlauf.render.methods;

import org.jspecify.annotations.NullMarked;
