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
 * @param dial whether it may be counted in divisions of the dial, as {@code reading_div}
 */
record Column(String name, List<Unit> units, String shown, boolean bare, boolean dial) {
  /** What stands in the name of a column that counts divisions. */
  static final String DIVISIONS = "div";

  Column(String name, List<Unit> units, String shown, boolean bare) {
    this(name, units, shown, bare, false);
  }

  /** What a dial showed: a length, or divisions of the dial. */
  static Column shown(String name) {
    Column length = of(name, Dimension.LENGTH, Unit.MICROMETRE);
    return new Column(name, length.units(), length.shown(), false, true);
  }

  static Column of(String name, Dimension dimension, Unit usual) {
    return new Column(name, Unit.ofDimension(dimension), name + "_" + usual.symbol(), false);
  }

  /** Text or count. */
  static Column bare(String name) {
    return new Column(name, List.of(), name, true);
  }
}
