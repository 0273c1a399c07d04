/** The command line: options in, text or JSON out, and an exit status. */
@NullMarked
package rundlauf.cli;

import org.jspecify.annotations.NullMarked;
