package rundlauf.readings;

import java.util.Optional;
import rundlauf.bench.Table;
import rundlauf.quantity.Refused;

/** Pushes to any side, by their angle from machine +X toward +Y; +X where none is said. */
record SidePushing(Columns columns, ForceReader force) implements Pushing {
  @Override
  public Push push(Table.Row row) {
    double load = force.newtons(columns, row);
    Optional<Double> said = said(row);
    if (load > 0 && columns.has("direction") && said.isEmpty()) {
      throw Refused.at(row.place(), "direction-missing");
    }
    return new Push(load, said.orElse(0.0));
  }

  @Override
  public Optional<Double> said(Table.Row row) {
    return columns.siIfGiven(row, "direction");
  }

  @Override
  public Optional<Double> dial(Table.Row row) {
    return columns.siIfGiven(row, "dial");
  }
}
