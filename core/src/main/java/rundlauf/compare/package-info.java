/** Differences of two setups, with their odds and whether the comparison is fair. */
@NullMarked
package rundlauf.compare;

import org.jspecify.annotations.NullMarked;
