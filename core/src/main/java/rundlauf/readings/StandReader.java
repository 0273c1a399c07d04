package rundlauf.readings;

import java.util.Optional;
import rundlauf.bench.Section;
import rundlauf.bench.Section.Bound;
import rundlauf.quantity.Dimension;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Refused;

/**
 * Reads the check of a dial's stand: pushed itself, with the force that the nose is pushed with.
 */
final class StandReader {
  static final String FIELD = "stand";

  private StandReader() {}

  /**
   * The check, if one was made.
   *
   * @param file of the trial, whose stand it is unless it has a name of its own
   * @return the largest travel that is not excluded, over the smallest force [m/N]
   * @throws Refused without {@code load} or {@code moved}
   */
  static Optional<LoadReadings.Stand> read(String file, Section s) {
    return s.section(FIELD, "name", "load", "moved").map(stand -> of(file, stand));
  }

  private static LoadReadings.Stand of(String file, Section stand) {
    Quantity load = stand.requiredQuantity("load", Dimension.FORCE, Bound.POSITIVE);
    Quantity moved = stand.requiredQuantity("moved", Dimension.LENGTH, Bound.NOT_NEGATIVE);
    double most = moved.si() + moved.halfWidth();
    String record = stand.text("name").map(name -> "stand/" + name).orElse(file);
    return new LoadReadings.Stand(record, most / (load.si() - load.halfWidth()));
  }
}
