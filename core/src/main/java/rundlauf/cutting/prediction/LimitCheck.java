package rundlauf.cutting.prediction;

import java.util.Optional;
import java.util.function.ToDoubleFunction;
import rundlauf.cutting.prediction.Reading.Touched;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;

/**
 * A limit as it is checked.
 *
 * @param code of the limit
 * @param unit of value and allowed
 * @param touched what the value rests on
 * @param missing why it cannot be judged; empty when it can
 * @param value of the outcome, SI
 * @param allowed in the same state, SI
 */
record LimitCheck(
    String code,
    Unit unit,
    Touched touched,
    Optional<Missing> missing,
    ToDoubleFunction<CutOutcome> value,
    ToDoubleFunction<CutOutcome> allowed) {
  /** Values closer than this to what is allowed, relatively, are at it: rounding. */
  private static final double ROUNDING = 1e-9;

  /** What is not known, so that the limit cannot be judged. */
  record Missing(boolean ofValue, Saying why) {}

  boolean judged() {
    return missing.isEmpty();
  }

  /**
   * Whether an outcome keeps it. Where the nose finds no rest nothing can be said of how it bends:
   * that counts against it.
   *
   * @param shift by how much finer steps move the value
   */
  boolean holds(CutOutcome outcome, double shift) {
    if (touched == Touched.BENDING && outcome.unsettled().isPresent()) {
      return false;
    }
    double permitted = allowed.applyAsDouble(outcome);
    double left = margin(value.applyAsDouble(outcome) + shift, permitted);
    return left >= -ROUNDING * Math.abs(permitted);
  }

  /** How far an outcome is past what is allowed, over what is allowed; negative within it. */
  double excess(CutOutcome outcome) {
    if (touched == Touched.BENDING && outcome.unsettled().isPresent()) {
      return Double.POSITIVE_INFINITY;
    }
    double permitted = allowed.applyAsDouble(outcome);
    if (permitted == Double.POSITIVE_INFINITY) {
      return Double.NEGATIVE_INFINITY;
    }
    return -margin(value.applyAsDouble(outcome), permitted)
        / Math.max(permitted, Double.MIN_NORMAL);
  }

  /** What is left. */
  double margin(double found, double permitted) {
    return Limit.AT_LEAST.contains(code) ? found - permitted : permitted - found;
  }
}
