package rundlauf.quantity;

/**
 * Where something was typed.
 *
 * @param file the file as the user named it; empty when there is none
 * @param line from 1; 0 when there is none
 * @param column from 1; 0 when there is none
 * @param field the path of the field, such as {@code indicator.division} or a CSV column; empty
 *     when there is none
 */
public record Place(String file, int line, int column, String field) {
  public static final Place NOWHERE = new Place("", 0, 0, "");

  /** A file as a whole. */
  public static Place of(String file) {
    return new Place(file, 0, 0, "");
  }

  /** The same spot, of another field. */
  public Place field(String name) {
    return new Place(file, line, column, name);
  }
}
