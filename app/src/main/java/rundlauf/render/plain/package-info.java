/** Results as plain text for a terminal: cautions first, then figures, what limits them, advice. */
@NullMarked
package rundlauf.render.plain;

import org.jspecify.annotations.NullMarked;
