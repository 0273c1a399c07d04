package rundlauf.report;

import rundlauf.maths.Samples;
import rundlauf.quantity.Unit;

/**
 * How the numbers of a column or an axis are printed, so that a chart and its text twin show the
 * very same ones.
 *
 * @param unit the unit printed
 * @param decimals digits after the point, 0 to 6
 */
public record Scale(Unit unit, int decimals) {
  private static final int MOST = 6;

  /** Shares of a printed unit closer than this to a decimal are that decimal: rounding of SI. */
  private static final double GRAIN = 1e-6;

  public Scale {
    if (decimals < 0 || decimals > MOST) {
      throw new IllegalArgumentException("decimals " + decimals + ", accepted 0 to " + MOST);
    }
  }

  /**
   * The fewest decimals that show every number in full.
   *
   * @param si the numbers, SI
   * @param most where to stop
   */
  static Scale showing(Unit unit, Samples si, int most) {
    int decimals = 0;
    while (decimals < most && !shows(unit, si, decimals)) {
      decimals++;
    }
    return new Scale(unit, decimals);
  }

  /** As many decimals as give the largest of the numbers three digits. */
  static Scale threeDigits(Unit unit, Samples si) {
    double largest = si.stream().map(x -> Math.abs(unit.fromSi(x))).max().orElse(0);
    int magnitude = largest > 0 ? (int) Math.floor(Math.log10(largest)) : 0;
    return new Scale(unit, Math.min(MOST, Math.max(0, 2 - magnitude)));
  }

  /** For a standard uncertainty; a third digit of one tells nobody anything. */
  static Scale uncertainty(Unit unit, double u) {
    int magnitude = u > 0 ? (int) Math.floor(Math.log10(unit.fromSi(u))) : 0;
    return new Scale(unit, Math.min(MOST, Math.max(0, 1 - magnitude)));
  }

  private static boolean shows(Unit unit, Samples si, int decimals) {
    double power = Math.pow(10, decimals);
    return si.stream()
        .map(x -> unit.fromSi(x) * power)
        .allMatch(x -> Math.abs(x - Math.rint(x)) <= GRAIN * power);
  }
}
