/** What every reduction gives: named figures, cautions and advice. */
@NullMarked
package rundlauf.reduce;

import org.jspecify.annotations.NullMarked;
