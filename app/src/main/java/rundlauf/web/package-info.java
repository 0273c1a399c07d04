/** The workbook in a browser: a thin face over the use cases. */
@NullMarked
package rundlauf.web;

import org.jspecify.annotations.NullMarked;
