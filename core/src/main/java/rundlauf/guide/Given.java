package rundlauf.guide;

/**
 * A cell that the sheet fills in by itself; whoever measures may change it.
 *
 * @param column its name with its unit, such as {@code angle_deg}
 * @param text as it would be typed
 */
public record Given(String column, String text) {
  /** Whether both are cells of one column. */
  boolean isAlike(Given other) {
    return column.equals(other.column);
  }
}
