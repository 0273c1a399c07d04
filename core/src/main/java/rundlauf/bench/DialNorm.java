package rundlauf.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rundlauf.quantity.Format;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Unit;

/**
 * Largest errors that JIS B 7503:2011 permits a dial indicator, at 20 °C, by its division, its
 * range and its bezel; as quoted in a gauge maker's catalogue (2016). A test holds every row
 * against {@code cases/metrology/jis_b7503_2011_mpe_um.csv}.
 */
final class DialNorm {
  /** As it is written in a file. */
  static final String NAME = "JIS B 7503";

  static final List<Row> ROWS =
      List.of(
          large(10, 0, 1, 3, 3, new Errors(5, 8, 8, 8)),
          large(10, 1, 3, 3, 3, new Errors(5, 8, 9, 10)),
          large(10, 3, 5, 3, 3, new Errors(5, 9, 10, 12)),
          large(10, 5, 10, 3, 3, new Errors(5, 9, 10, 15)),
          large(10, 10, 20, 5, 4, new Errors(8, 10, 15, 25)),
          large(10, 20, 30, 7, 5, new Errors(10, 12, 15, 30)),
          large(10, 30, 50, 8, 5, new Errors(10, 12, 15, 40)),
          large(10, 50, 100, 9, 5, new Errors(12, 17, 20, 50)),
          large(5, 0, 5, 3, 3, new Errors(5, 9, 10, 12)),
          large(1, 0, 1, 2, 0.5, new Errors(2, 3.5, 4, 5)),
          large(1, 1, 2, 2, 0.5, new Errors(2, 4, 5, 7)),
          large(1, 2, 5, 3, 1, new Errors(3.5, 5, 6, 10)),
          small(10, 0, 1, 4, 3, new Errors(8, 11, 12, 15)),
          small(10, 1, 3, 4, 3, new Errors(8, 11, 12, 16)),
          small(10, 3, 5, 4, 3, new Errors(8, 12, 14, 18)),
          small(10, 5, 10, 5, 3, new Errors(9, 12, 14, 20)),
          small(5, 0, 5, 3.5, 3, new Errors(6, 9, 10, 12)),
          small(2, 0, 1, 2.5, 1, new Errors(2.5, 4.5, 5, 6)),
          small(1, 0, 1, 2, 1, new Errors(2.5, 4, 4.5, 5)));

  /** Divisions and ranges closer than this share are the same, in whatever units they stand. */
  private static final double SAME = 1e-9;

  private DialNorm() {}

  /**
   * Largest error over a tenth of the needle's turn, half of it, one turn and the whole range [um].
   */
  record Errors(double tenthTurn, double halfTurn, double turn, double range) {}

  /**
   * What one kind of dial is permitted.
   *
   * @param division [um]
   * @param above the range is longer than this [mm]
   * @param upTo and at most this [mm]
   * @param small bezel under 50 mm, or plunger at the back
   * @param retrace forward against return at one point [um]
   * @param repeatability [um]
   */
  record Row(
      double division,
      double above,
      double upTo,
      boolean small,
      double retrace,
      double repeatability,
      Errors errors) {

    private boolean takes(Quantity asked, Quantity range) {
      double mm = Unit.MILLIMETRE.fromSi(range.si());
      double um = Unit.MICROMETRE.fromSi(asked.si());
      return Math.abs(um - division) <= SAME * division
          && mm > above * (1 + SAME)
          && mm <= upTo * (1 + SAME);
    }
  }

  private static Row large(
      double division, double above, double upTo, double retrace, double repeat, Errors errors) {
    return new Row(division, above, upTo, false, retrace, repeat, errors);
  }

  private static Row small(
      double division, double above, double upTo, double retrace, double repeat, Errors errors) {
    return new Row(division, above, upTo, true, retrace, repeat, errors);
  }

  /**
   * The row of a dial.
   *
   * @param small whether its bezel is small; where that is not said the small bezel's larger errors
   *     hold, unless the norm has such a dial with a large bezel only
   * @return empty when the norm has none
   */
  static Optional<Row> row(Quantity division, Quantity range, Optional<Boolean> small) {
    List<Row> found = ROWS.stream().filter(row -> row.takes(division, range)).toList();
    return found.stream()
        .filter(row -> row.small() == small.orElse(true))
        .findFirst()
        .or(() -> small.isPresent() ? Optional.empty() : found.stream().findFirst());
  }

  /** The dials the norm has: {@code 0.01 mm (≤ 100 mm)}, the longest range of each division. */
  static List<String> dials(Optional<Boolean> small) {
    List<String> dials = new ArrayList<>();
    for (double division : new double[] {10, 5, 2, 1}) {
      ROWS.stream()
          .filter(row -> row.division() == division)
          .filter(row -> row.small() == small.orElse(row.small()))
          .mapToDouble(Row::upTo)
          .max()
          .ifPresent(longest -> dials.add(mm(division / 1000) + " (≤ " + mm(longest) + ")"));
    }
    return dials;
  }

  private static String mm(double value) {
    return Format.amount(Unit.MILLIMETRE.toSi(value), Unit.MILLIMETRE);
  }
}
