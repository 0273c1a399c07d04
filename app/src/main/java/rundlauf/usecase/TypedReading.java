package rundlauf.usecase;

import java.util.List;

/**
 * A reading as it was typed.
 *
 * @param key that the device gave it: the same reading has the same one, however often it is sent
 * @param cells in the order of the sheet's columns
 */
public record TypedReading(String key, List<Cell> cells) {
  public TypedReading {
    cells = List.copyOf(cells);
  }

  /**
   * What stands in one column.
   *
   * @param column its name with its unit, such as {@code reading_um}
   * @param text as typed
   */
  public record Cell(String column, String text) {}
}
