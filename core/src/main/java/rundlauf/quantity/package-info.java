/**
 * What a number means: units, quantities as typed, figures with their doubt by cause, sayings and
 * refusals.
 */
@NullMarked
package rundlauf.quantity;

import org.jspecify.annotations.NullMarked;
