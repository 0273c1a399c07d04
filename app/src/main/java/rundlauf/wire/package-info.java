/** What other programs read: every result as a JSON document on one line. */
@NullMarked
package rundlauf.wire;

import org.jspecify.annotations.NullMarked;
