/** What the machine has that is not its disk: its processors. */
@NullMarked
package rundlauf.devices;

import org.jspecify.annotations.NullMarked;
