package rundlauf.readings;

import java.util.Optional;
import java.util.OptionalDouble;
import rundlauf.quantity.Cause;
import rundlauf.quantity.Measured;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;

/**
 * What limits an indicator. All lengths in metres, already multiplied by the cosine of its angle.
 *
 * @param record begins the ids of its causes: {@code indicator/NAME} for a bench's, else the
 *     trial's file
 * @param division one division
 * @param readTo what readings are rounded to
 * @param limitOfError largest error of a difference of two readings
 * @param hysteresis retrace: forward against return at one point
 * @param repeatability as given
 * @param tipRadius radius of a ball tip
 * @param angle between plunger and measured direction, rad, with its limits; readings are already
 *     corrected by its cosine
 * @param fromNorm that the limits are those a norm permits, where they are
 */
public record IndicatorLimits(
    String record,
    double division,
    double readTo,
    Optional<LimitOfError> limitOfError,
    OptionalDouble hysteresis,
    OptionalDouble repeatability,
    OptionalDouble tipRadius,
    Optional<Quantity> angle,
    Optional<Saying> fromNorm) {

  /** Where the limits are the indicator's own. */
  public IndicatorLimits(
      String record,
      double division,
      double readTo,
      Optional<LimitOfError> limitOfError,
      OptionalDouble hysteresis,
      OptionalDouble repeatability,
      OptionalDouble tipRadius,
      Optional<Quantity> angle) {
    this(
        record,
        division,
        readTo,
        limitOfError,
        hysteresis,
        repeatability,
        tipRadius,
        angle,
        Optional.empty());
  }

  /**
   * What the limit of error does to a difference of two readings.
   *
   * @param record begins the id of its cause
   * @param span of the readings [m]
   * @param over what the difference is divided by
   * @return 0 with the limit over {@code over} as a rectangular cause; without a limit, just 0
   * @see "JCGM 100:2008, 4.3.7"
   */
  public Measured error(String record, double span, double over) {
    Measured none = Measured.exact(0, Unit.MICROMETRE);
    return limitOfError
        .map(limit -> limit.over(span) / over / Math.sqrt(3))
        .map(u -> none.with(Cause.rectangular(record, "limit-of-error"), u))
        .orElse(none);
  }

  /** True over corrected reading: 1, with the doubt of the dial's angle. */
  public Measured scale() {
    Measured one = Measured.exact(1, Unit.ONE);
    return angle
        .filter(Quantity::hasLimits)
        .map(a -> one.with(Cause.rectangular(record, "plunger-angle"), -Math.tan(a.si()) * a.u()))
        .orElse(one);
  }

  /**
   * The largest error of a difference of two readings, by the span the readings use.
   *
   * @param tenthTurn over a tenth of the needle's turn, where given
   * @param halfTurn over half a turn
   * @param turn over one turn
   * @param range over the whole range, or the one number given
   * @param needleTurn travel of one turn of the needle: 100 divisions (common practice, no source)
   */
  public record LimitOfError(
      OptionalDouble tenthTurn,
      OptionalDouble halfTurn,
      OptionalDouble turn,
      double range,
      double needleTurn) {
    /** The smallest limit that covers {@code span} metres. */
    public double over(double span) {
      if (tenthTurn.isPresent() && span <= needleTurn / 10) {
        return tenthTurn.getAsDouble();
      }
      if (halfTurn.isPresent() && span <= needleTurn / 2) {
        return halfTurn.getAsDouble();
      }
      return turn.isPresent() && span <= needleTurn ? turn.getAsDouble() : range;
    }
  }
}
