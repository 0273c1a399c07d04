/** What each tooth takes. */
@NullMarked
package rundlauf.cutting.chip;

import org.jspecify.annotations.NullMarked;
