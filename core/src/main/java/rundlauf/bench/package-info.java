/** What was seen and with what, as it was typed, with the place where it was typed. */
@NullMarked
package rundlauf.bench;

import org.jspecify.annotations.NullMarked;
