/** Values and sayings to text and pages: all wording, all markup. */
@NullMarked
package rundlauf.render;

import org.jspecify.annotations.NullMarked;
