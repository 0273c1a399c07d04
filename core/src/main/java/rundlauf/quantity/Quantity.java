package rundlauf.quantity;

/**
 * A quantity as it was typed.
 *
 * @param si its value in SI
 * @param halfWidth half-width of its limits in SI, 0 when it was given without ±
 * @param unit the unit it was typed in
 */
public record Quantity(double si, double halfWidth, Unit unit) {
  /** Given without limits. */
  public static Quantity exact(double si, Unit unit) {
    return new Quantity(si, 0, unit);
  }

  public boolean hasLimits() {
    return halfWidth > 0;
  }

  /**
   * Standard uncertainty of a rectangular distribution of this half-width (JCGM 100:2008, 4.3.7).
   */
  public double u() {
    return halfWidth / Math.sqrt(3);
  }

  /** The quantity as a figure whose doubt is the one cause given; exact when it has no limits. */
  public Measured measured(Cause cause) {
    Measured exact = Measured.exact(si, unit);
    return hasLimits() ? exact.with(cause, u()) : exact;
  }
}
