package rundlauf.files;

/**
 * One line of a table.
 *
 * @param text without its end
 * @param number in its file, from 1
 * @param indent characters before it in its file, when the table stands within a document
 */
record Line(String text, int number, int indent) {}
