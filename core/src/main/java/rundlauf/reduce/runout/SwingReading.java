package rundlauf.reduce.runout;

import rundlauf.quantity.Cause;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Measured;
import rundlauf.quantity.Unit;
import rundlauf.readings.IndicatorLimits;

/** A swing read by eye as a figure. */
final class SwingReading {
  private SwingReading() {}

  /**
   * The swing with the rounding of both its ends and the dial's limit of error.
   *
   * @param swing largest less smallest reading [m]
   * @param dial what limits it
   * @param record begins the ids of the rounding's causes
   * @return swing [m]; its lower end not below 0
   */
  static Figure tir(double swing, IndicatorLimits dial, String record) {
    double rounding = dial.readTo() / Math.sqrt(12);
    Measured read =
        Measured.exact(swing, Unit.MICROMETRE)
            .with(Cause.rectangular(record, "rounding-high"), rounding)
            .with(Cause.rectangular(record, "rounding-low"), -rounding);
    if (dial.limitOfError().isPresent()) {
      double limit = dial.limitOfError().get().over(swing);
      read = read.with(Cause.rectangular(dial.record(), "limit-of-error"), limit / Math.sqrt(3));
    }
    return read.notBelow(0);
  }
}
