/** What a setup is: each trait measured, entered, taught or assumed, with joint draws. */
@NullMarked
package rundlauf.character;

import org.jspecify.annotations.NullMarked;
