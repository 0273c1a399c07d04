package rundlauf.readings;

import java.util.List;
import rundlauf.quantity.Dimension;
import rundlauf.quantity.Unit;

/**
 * A column that a table may have.
 *
 * @param name before the unit
 * @param units that its name may carry; none for a text or a count
 * @param shown how it is named in a sentence, such as {@code reading_um}
 * @param bare whether it may stand without a unit
 */
record Column(String name, List<Unit> units, String shown, boolean bare) {
  static Column of(String name, Dimension dimension, Unit usual) {
    return new Column(name, Unit.ofDimension(dimension), name + "_" + usual.symbol(), false);
  }

  /** Text or count. */
  static Column bare(String name) {
    return new Column(name, List.of(), name, true);
  }
}
