/** What can be asked of the program, one class a use case, and the ports they read through. */
@NullMarked
package rundlauf.usecase;

import org.jspecify.annotations.NullMarked;
