/** What a trial's sheet says while the trial is taken: the next step, and when enough is enough. */
@NullMarked
package rundlauf.guide;

import org.jspecify.annotations.NullMarked;
