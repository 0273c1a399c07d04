package rundlauf.quantity;

/**
 * A coverage interval.
 *
 * @param low lower end, SI
 * @param high upper end, SI, at least {@code low}
 * @param level the probability with which it holds the value, 0 to 1
 */
public record Interval(double low, double high, double level) {
  /**
   * The level every figure is given at; our choice, as JCGM 100:2008, 6.2.1 leaves it to the trade.
   */
  public static final double LEVEL = 0.95;

  public Interval {
    if (!(low <= high)) {
      throw new IllegalArgumentException("interval from " + low + " to " + high);
    }
  }

  public boolean holds(double value) {
    return low <= value && value <= high;
  }
}
