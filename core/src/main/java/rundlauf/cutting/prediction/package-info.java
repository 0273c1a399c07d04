/** What a cut will do in a setup: its figures with their doubt, and the limits it keeps. */
@NullMarked
package rundlauf.cutting.prediction;

import org.jspecify.annotations.NullMarked;
