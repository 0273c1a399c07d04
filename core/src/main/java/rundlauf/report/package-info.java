/** What a report says, as values: sections, tables, charts; no markup. */
@NullMarked
package rundlauf.report;

import org.jspecify.annotations.NullMarked;
