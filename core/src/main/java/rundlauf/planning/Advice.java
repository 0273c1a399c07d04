package rundlauf.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rundlauf.cutting.prediction.Limit;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Saying;
import rundlauf.safety.Standing;

/** What would help where no setup can be recommended for a job. */
final class Advice {
  private Advice() {}

  /**
   * The nearest miss and what would help it; none where a setup can be recommended.
   *
   * @param setups best first
   */
  static List<Saying> of(JobTask task, List<SetupPlan> setups) {
    if (task.feature() == Feature.DRILL || setups.stream().anyMatch(SetupPlan::recommended)) {
      return List.of();
    }
    List<Saying> advice = new ArrayList<>();
    setups.stream().filter(SetupPlan::feasible).findFirst().ifPresent(p -> advice.add(able(p)));
    setups.stream()
        .filter(plan -> plan.best().isPresent() && !plan.feasible())
        .filter(plan -> plan.standing() != Standing.HELD)
        .findFirst()
        .ifPresent(plan -> advice.addAll(missed(plan)));
    if (setups.stream().allMatch(plan -> plan.best().isEmpty())) {
      advice.add(Saying.of("no-setup-could-be-tried", "setups"));
    }
    return advice;
  }

  /** A setup that could do it, were its spindle inspected and found good. */
  private static Saying able(SetupPlan plan) {
    return plan.standing() == Standing.HELD
        ? Saying.of("only-held-would-do", "setups", Arg.of(plan.setup()))
        : Saying.of("inspect-to-recommend", "setups", Arg.of(plan.setup()));
  }

  private static List<Saying> missed(SetupPlan plan) {
    Optional<Limit> failing = plan.boundBy().filter(limit -> limit.judged() && !limit.holds());
    if (failing.isEmpty()) {
      return plan.because();
    }
    Limit limit = failing.get();
    return List.of(
        Saying.of(
            "nearest-miss",
            limit.code(),
            Arg.of(plan.setup()),
            Arg.term("limit-" + limit.code()),
            shown(limit.value()),
            shown(limit.allowed()),
            Arg.of((long) Math.floor(100 * limit.probability().orElseThrow()))),
        helps(limit.code(), plan));
  }

  private static Arg shown(Figure figure) {
    return Arg.about(figure.value(), figure.unit());
  }

  private static Saying helps(String limit, SetupPlan plan) {
    return switch (limit) {
      case "wall-error" ->
          cutsTooFar(plan)
              ? Saying.of("help-wall-cut-too-far", limit)
              : Saying.of("help-wall-left-standing", limit);
      case "finish" -> Saying.of("help-finish", limit);
      case "chip-thickest" -> Saying.of("help-chip-thickest", limit);
      case "chip-thinnest" -> Saying.of("help-chip-thinnest", limit);
      case "stress" -> Saying.of("help-stress", limit);
      case "power", "torque" -> Saying.of("help-power", limit);
      case "holding-in-plane", "holding-lift" -> Saying.of("help-holding", limit);
      case "axes-feed" -> Saying.of("help-axes-feed", limit);
      default -> Saying.of("help-speed", limit);
    };
  }

  /** Whether the wall's error is that too much is taken off, as runout does. */
  private static boolean cutsTooFar(SetupPlan plan) {
    Map<String, Figure> figures = plan.best().orElseThrow().figures().byPath();
    return figures.entrySet().stream()
            .filter(entry -> entry.getKey().startsWith("deflection.wallError"))
            .map(Map.Entry::getValue)
            .filter(Figure::known)
            .mapToDouble(Figure::value)
            .reduce(0, (a, b) -> Math.abs(b) > Math.abs(a) ? b : a)
        < 0;
  }
}
