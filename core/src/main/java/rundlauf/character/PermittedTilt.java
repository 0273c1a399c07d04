package rundlauf.character;

import java.util.List;
import java.util.Optional;
import rundlauf.safety.norm.ColletTable;

/**
 * How far a shank may lean that nobody has read at two stations.
 *
 * <p>As if the whole runout that ISO 15488 Table 4 permits a class 2 collet at the table's distance
 * from its face (as quoted on a collet maker's technical page) came of the tilt alone: half of it
 * over the distance is the mean size, taken as that of a Rayleigh distribution, so that every
 * direction is as likely. A chuck or a sleeve may lean farther.
 */
final class PermittedTilt {
  /** Shanks are this near to their nominal size; our choice, wider than h6. */
  private static final double SAME_DIAMETER = 0.02e-3;

  private PermittedTilt() {}

  /**
   * Sd of one component of the tilt.
   *
   * @param shank its diameter [m]; where it is not known, the row that leans most
   * @return [m/m]
   */
  static double component(Optional<Double> shank) {
    double diameter = shank.orElse(0.0);
    List<ColletTable.Row> rows = ColletTable.ROWS;
    ColletTable.Row row =
        rows.stream()
            .filter(r -> diameter <= r.most() + SAME_DIAMETER)
            .findFirst()
            .orElse(rows.get(rows.size() - 1));
    return row.limit(2) / 2 / row.test() / Math.sqrt(Math.PI / 2);
  }
}
