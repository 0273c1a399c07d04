package rundlauf.safety.norm;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Measured;
import rundlauf.quantity.Missing;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.reduce.NormVerdict;
import rundlauf.reduce.NormVerdict.Outcome;

/** Verdicts with their words. */
final class Verdicts {
  private Verdicts() {}

  /**
   * By the probability that the figure lies within.
   *
   * @param limit SI
   * @param figure known
   * @param beside what else must be known of it
   */
  static NormVerdict decided(
      String norm, String about, double limit, Figure figure, List<Saying> beside) {
    double within = Conformity.probabilityWithin(figure, limit);
    Outcome outcome = Conformity.outcome(within);
    List<Saying> said = new ArrayList<>();
    said.add(words(outcome, norm, about, within));
    said.addAll(beside);
    return decided(norm, about, limit, figure, within, said);
  }

  /** The same in words of its own. */
  static NormVerdict decided(
      String norm, String about, double limit, Figure figure, double within, List<Saying> said) {
    return new NormVerdict(
        norm,
        about,
        Measured.exact(limit, figure.unit()),
        figure,
        OptionalDouble.of(within),
        Conformity.outcome(within),
        said);
  }

  private static Saying words(Outcome outcome, String norm, String about, double within) {
    return switch (outcome) {
      case PROVEN -> Saying.of("norm-proven", norm, Arg.of(about), Arg.of(norm), atLeast(within));
      case DISPROVEN ->
          Saying.of("norm-disproven", norm, Arg.of(about), Arg.of(norm), atLeast(1 - within));
      default ->
          Saying.of(
              "norm-not-proven",
              norm,
              Arg.of(about),
              Arg.of(norm),
              Arg.of(Math.round(100 * within)));
    };
  }

  /** Whole percents that the probability reaches, 99 at the most: certainty is not to be had. */
  static Arg atLeast(double probability) {
    return Arg.of((long) Math.min(99, Math.floor(100 * probability)));
  }

  /**
   * Without a decision.
   *
   * @param unit of the figure that is missing
   * @param why at least one saying
   */
  static NormVerdict undecided(
      String norm, String about, Figure limit, Unit unit, List<Saying> why) {
    return new NormVerdict(
        norm,
        about,
        limit,
        new Missing(unit, why.get(0)),
        OptionalDouble.empty(),
        Outcome.NOT_DECIDED,
        why);
  }
}
