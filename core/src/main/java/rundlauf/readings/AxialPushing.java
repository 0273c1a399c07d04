package rundlauf.readings;

import java.util.Optional;
import rundlauf.bench.Entry;
import rundlauf.bench.Section;
import rundlauf.bench.Section.Bound;
import rundlauf.bench.Table;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Dimension;
import rundlauf.quantity.QuantityText;
import rundlauf.quantity.Refused;
import rundlauf.quantity.Unit;

/**
 * Pushes toward the housing (direction 0, machine +Z) and pulls away from it (half a turn): by a
 * word, by the angles that stand for them, or, without a column of directions, by the load's sign.
 */
record AxialPushing(Columns columns, ForceReader force) implements Pushing {
  private static final double PUSH = 0;
  private static final double PULL = Math.PI;

  /** What converting 180 degrees to radians leaves behind is far under this [rad]. */
  private static final double NEAR = 1e-9;

  /** A column of words, or of the angles that stand for them. */
  static Column column(String name) {
    return new Column(name, Unit.ofDimension(Dimension.ANGLE), name, true);
  }

  @Override
  public Push push(Table.Row row) {
    if (!columns.has("direction")) {
      double load = columns.has("load") ? columns.si(row, "load") : force.newtons(columns, row);
      return new Push(Math.abs(load), load < 0 ? PULL : PUSH);
    }
    refuseSign(row);
    double load = force.newtons(columns, row);
    Optional<Double> said = said(row);
    if (load > 0 && said.isEmpty()) {
      throw Refused.at(row.place(), "axial-direction-missing");
    }
    return new Push(load, said.orElse(PUSH));
  }

  private void refuseSign(Table.Row row) {
    if (columns.has("load") && columns.si(row, "load") < 0) {
      Entry.Scalar cell = columns.typed(row, "load");
      throw Refused.at(cell.place(), "axial-load-signed", Arg.typed(cell.text().strip()));
    }
  }

  @Override
  public Optional<Double> said(Table.Row row) {
    return along(row, "direction");
  }

  @Override
  public Optional<Double> dial(Table.Row row) {
    return along(row, "dial");
  }

  private Optional<Double> along(Table.Row row, String column) {
    return columns.cell(row, column).map(cell -> along(cell, columns.unit(column)));
  }

  private static double along(Entry.Scalar cell, Unit unit) {
    String typed = cell.text().strip();
    int word = AxialReader.DIRECTIONS.indexOf(typed);
    if (word >= 0) {
      return word == 0 ? PUSH : PULL;
    }
    double angle = angle(cell, unit);
    if (Math.abs(Math.sin(angle)) > NEAR) {
      throw unknown(cell);
    }
    return Math.cos(angle) > 0 ? PUSH : PULL;
  }

  private static double angle(Entry.Scalar cell, Unit unit) {
    try {
      return unit == Unit.ONE
          ? Section.quantity(cell, Dimension.ANGLE, Bound.ANY).si()
          : QuantityText.bare(cell.text(), unit, cell.flow(), cell.place());
    } catch (Refused notAnAngle) {
      throw unknown(cell);
    }
  }

  private static Refused unknown(Entry.Scalar cell) {
    return Refused.at(cell.place(), "axial-direction-unknown", Arg.typed(cell.text().strip()));
  }
}
