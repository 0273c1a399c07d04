/** What the workbook's pages are given, and the pages made of it. */
@NullMarked
package rundlauf.render.workbook;

import org.jspecify.annotations.NullMarked;
