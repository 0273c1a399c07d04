package rundlauf.safety.norm;

import java.util.List;
import java.util.Optional;
import rundlauf.quantity.Unit;

/**
 * Runout of 8° collets on the norm's test mandrel: ISO 15488 Table 4, as quoted on a collet maker's
 * technical page. A test holds every row against {@code
 * cases/metrology/iso15488_collet_runout.csv}.
 */
public final class ColletTable {
  public static final List<Row> ROWS =
      List.of(
          new Row(1, 1.6, 6, 10, 15, 6),
          new Row(1.6, 3, 10, 10, 15, 6),
          new Row(3, 6, 16, 10, 15, 8),
          new Row(6, 10, 25, 10, 15, 9),
          new Row(10, 18, 40, 15, 20, 11),
          new Row(18, 26, 50, 15, 20, 13));

  /** Diameters closer than this share are the same, in whatever units they were typed. */
  private static final double SAME = 1e-9;

  private ColletTable() {}

  /**
   * One row.
   *
   * @param above the bore is larger than this [mm]; the first row includes it
   * @param upTo and at most this [mm]
   * @param distance of the test from the collet's face [mm]
   * @param first largest runout of class 1 [um]
   * @param second largest runout of class 2 [um]
   * @param pinUnder how far an h6 mandrel may lie under its nominal diameter [um]; from memory: ISO
   *     286-2, tolerance grade 6, the largest of the sizes in the row
   */
  public record Row(
      double above, double upTo, double distance, double first, double second, double pinUnder) {
    /** Distance of the test [m]. */
    public double test() {
      return Unit.MILLIMETRE.toSi(distance);
    }

    /** Largest runout of a class, 1 or 2 [m]. */
    public double limit(int grade) {
      return Unit.MICROMETRE.toSi(grade == 1 ? first : second);
    }

    /** Largest bore of the row [m]. */
    public double most() {
      return Unit.MILLIMETRE.toSi(upTo);
    }

    double under() {
      return Unit.MICROMETRE.toSi(pinUnder);
    }
  }

  /** The row of a bore [m]; empty under 1 mm and over 26 mm. */
  static Optional<Row> row(double bore) {
    double mm = Unit.MILLIMETRE.fromSi(bore);
    return ROWS.stream()
        .filter(row -> mm <= row.upTo() * (1 + SAME))
        .findFirst()
        .filter(row -> mm >= ROWS.get(0).above() * (1 - SAME));
  }
}
