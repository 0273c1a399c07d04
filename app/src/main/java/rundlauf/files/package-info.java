/** Files in and out: trials, benches, packages, each read within bounds that stand in one place. */
@NullMarked
package rundlauf.files;

import org.jspecify.annotations.NullMarked;
