/** Benches, trials and readings on a database: SQLite in a file, or PostgreSQL by its address. */
@NullMarked
package rundlauf.store;

import org.jspecify.annotations.NullMarked;
