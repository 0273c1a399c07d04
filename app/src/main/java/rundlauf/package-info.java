/** Where everything is put together. */
@NullMarked
package rundlauf;

import org.jspecify.annotations.NullMarked;
