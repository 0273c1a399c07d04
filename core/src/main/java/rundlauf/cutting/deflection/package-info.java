/** How cutter and setup give way, the error of the wall, stress and surface. */
@NullMarked
package rundlauf.cutting.deflection;

import org.jspecify.annotations.NullMarked;
