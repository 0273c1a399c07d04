package rundlauf.usecase;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import rundlauf.bench.RowColumns;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;

/** Which texts may stand in a cell of a table that is written for others. */
final class CellText {
  /** Signs by which a spreadsheet tells a formula; a number may have its own before it. */
  private static final String FORMULA = "=+-@";

  private static final Pattern NUMBER = Pattern.compile("[+-]?[\\d.,]+([eE][+-]?\\d+)?");

  private CellText() {}

  /** The reading without blanks round its texts and without empty cells. */
  static TypedReading checked(TypedReading typed) {
    require(RowColumns.ID, typed.key());
    List<TypedReading.Cell> cells = new ArrayList<>();
    for (TypedReading.Cell cell : typed.cells()) {
      String text = cell.text().strip();
      require(cell.column(), text);
      if (!text.isEmpty()) {
        cells.add(new TypedReading.Cell(cell.column(), text));
      }
    }
    return new TypedReading(typed.key(), cells);
  }

  /** Refuses a text that a line of a table cannot hold, or that a spreadsheet would run. */
  static void require(String field, String text) {
    if (text.chars().anyMatch(Character::isISOControl)) {
      throw Refused.at(Place.NOWHERE.field(field), "cell-with-break");
    }
    boolean formula = !text.isEmpty() && FORMULA.indexOf(text.charAt(0)) >= 0;
    if (formula && !NUMBER.matcher(text).matches()) {
      throw Refused.at(Place.NOWHERE.field(field), "cell-formula");
    }
  }
}
