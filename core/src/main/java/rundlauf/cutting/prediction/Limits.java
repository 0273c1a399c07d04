package rundlauf.cutting.prediction;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Missing;

/**
 * How a cut stands to its limits.
 *
 * @param limits each by itself
 * @param probability that all judged ones hold together
 */
record Limits(List<Limit> limits, double probability) {
  static Limits of(
      List<LimitCheck> checks, Outcomes outcomes, Spread spread, Assumptions assumptions) {
    boolean[] kept = new boolean[outcomes.drawn().size()];
    Arrays.fill(kept, true);
    List<Limit> limits = new ArrayList<>();
    for (LimitCheck check : checks) {
      limits.add(
          check.judged()
              ? judged(check, outcomes, spread, assumptions, kept)
              : unjudged(check, outcomes, spread, assumptions));
    }
    return new Limits(limits, share(kept));
  }

  private static Limit judged(
      LimitCheck check,
      Outcomes outcomes,
      Spread spread,
      Assumptions assumptions,
      boolean[] keptByAll) {
    double shift = outcomes.shift(check.value());
    boolean[] kept = new boolean[keptByAll.length];
    for (int i = 0; i < kept.length; i++) {
      kept[i] = check.holds(outcomes.drawn().get(i), shift);
      keptByAll[i] &= kept[i];
    }
    Figure value = outcomes.figure(check.unit(), check.value(), spread);
    Figure allowed = outcomes.figure(check.unit(), check.allowed(), spread);
    Figure margin =
        outcomes.figure(
            check.unit(),
            o -> check.margin(check.value().applyAsDouble(o), check.allowed().applyAsDouble(o)),
            spread);
    return new Limit(
        check.code(),
        value,
        allowed,
        margin,
        OptionalDouble.of(share(kept)),
        assumptions.beneath(check.touched()),
        assumptions.beneathAllowed(check));
  }

  private static Limit unjudged(
      LimitCheck check, Outcomes outcomes, Spread spread, Assumptions assumptions) {
    var missing = check.missing().orElseThrow();
    Figure gone = new Missing(check.unit(), missing.why());
    Figure value = missing.ofValue() ? gone : outcomes.figure(check.unit(), check.value(), spread);
    Figure allowed =
        missing.ofValue() ? outcomes.figure(check.unit(), check.allowed(), spread) : gone;
    return new Limit(
        check.code(),
        value,
        allowed,
        gone,
        OptionalDouble.empty(),
        assumptions.beneath(check.touched()),
        assumptions.beneathAllowed(check));
  }

  private static double share(boolean[] kept) {
    int count = 0;
    for (boolean one : kept) {
      count += one ? 1 : 0;
    }
    return (double) count / kept.length;
  }
}
