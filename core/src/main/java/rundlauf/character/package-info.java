/** What a setup is: every trait with its doubt, and where it comes from. */
@NullMarked
package rundlauf.character;

import org.jspecify.annotations.NullMarked;
