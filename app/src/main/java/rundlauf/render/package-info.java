/** All wording and all drawing; the one place where sentences are made. */
@NullMarked
package rundlauf.render;

import org.jspecify.annotations.NullMarked;
