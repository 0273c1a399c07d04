/**
 * Benchmarks, run by hand; their figures stand in docs/speed.md with the command that made them.
 */
@NullMarked
package rundlauf.perf;

import org.jspecify.annotations.NullMarked;
