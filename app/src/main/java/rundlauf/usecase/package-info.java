/** What the program can be asked to do: one class a use case, with one public method. */
@NullMarked
package rundlauf.usecase;

import org.jspecify.annotations.NullMarked;
