/** Method pages and their formulas. */
@NullMarked
package rundlauf.render.methods;

import org.jspecify.annotations.NullMarked;
