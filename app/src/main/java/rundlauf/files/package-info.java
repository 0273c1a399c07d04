/** Files in and out: trials, benches, packages. */
@NullMarked
package rundlauf.files;

import org.jspecify.annotations.NullMarked;
