package rundlauf.cutting.prediction;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rundlauf.cutting.deflection.Bending;
import rundlauf.maths.Draws;

/** Tries many cuts with one cutter in one setup, all with the same draws. */
public final class Trying {
  private final CutTask first;
  private final HeldStates held;
  private final Draws draws;

  private Trying(CutTask first, HeldStates held, Draws draws) {
    this.first = first;
    this.held = held;
    this.draws = draws;
  }

  /**
   * Makes the draws that every cut is tried with.
   *
   * @param task any cut with the cutter, the material and the limits that all share
   * @param draws that the setup's figures were made with
   * @param states how many of them are looked at
   */
  public static Trying of(CutTask task, Draws draws, int states) {
    return new Trying(
        task, HeldStates.of(task.cutter(), task.material(), task.setup(), draws, states), draws);
  }

  /**
   * Tries a cut: every judged limit in every draw, the cheapest first, until so many draws have
   * failed that the probability asked is out of reach.
   *
   * @param cut all else as in the task
   */
  public Tried tried(CutAsked cut) {
    CutTask task = first.with(cut);
    List<LimitCheck> checks =
        LimitChecks.of(task, Optional.empty()).stream().filter(LimitCheck::judged).toList();
    CutState central = CutStates.central(cut, held.central()).get(0);
    boolean feedback = CutReadings.bendingMissing(task).isEmpty() && Feedback.counts(central);
    List<CutState> states = CutStates.drawn(cut, held.drawn(), draws);
    int most = (int) Math.floor((1 - Limit.ASKED) * states.size() + 1e-9);
    Map<String, Integer> failures = new LinkedHashMap<>();
    Bending bending = new Bending();
    int failed = 0;
    int looked = 0;
    while (looked < states.size() && failed <= most) {
      Optional<String> fails =
          fails(checks, CutOutcome.coarse(states.get(looked), feedback, bending));
      looked++;
      failed += fails.isPresent() ? 1 : 0;
      fails.ifPresent(code -> failures.merge(code, 1, Integer::sum));
    }
    return new Tried(1 - (double) failed / states.size(), looked, failures);
  }

  /**
   * How far a cut is from keeping its limits: of every judged one in the central states the most
   * that the value is past what is allowed, over what is allowed.
   *
   * @param cut all else as in the task
   * @return negative where all are kept; infinite where the nose finds no rest
   */
  public double excess(CutAsked cut) {
    CutTask task = first.with(cut);
    List<CutState> states = CutStates.central(cut, held.central());
    boolean feedback = CutReadings.bendingMissing(task).isEmpty() && Feedback.counts(states.get(0));
    Bending bending = new Bending();
    double most = Double.NEGATIVE_INFINITY;
    for (CutState state : states) {
      CutOutcome outcome = CutOutcome.coarse(state, feedback, bending);
      for (LimitCheck check : LimitChecks.of(task, Optional.empty())) {
        most = check.judged() ? Math.max(most, check.excess(outcome)) : most;
      }
    }
    return most;
  }

  private static Optional<String> fails(List<LimitCheck> checks, CutOutcome outcome) {
    return checks.stream()
        .filter(check -> !check.holds(outcome, 0))
        .map(LimitCheck::code)
        .findFirst();
  }
}
