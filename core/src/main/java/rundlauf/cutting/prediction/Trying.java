package rundlauf.cutting.prediction;

import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rundlauf.bench.Cut;
import rundlauf.cutting.Operation;
import rundlauf.cutting.deflection.Bending;
import rundlauf.maths.Draws;
import rundlauf.quantity.Quantity;

/**
 * Tries many cuts with one cutter in one setup, all with the same draws. What it has worked out is
 * kept: to be used by one after the other.
 */
public final class Trying {
  private final CutTask first;
  private final HeldStates held;
  private final Draws draws;
  private final Map<Engaged, CutOutcome[]> known = new LinkedHashMap<>();
  private final Integer[] worstFirst;
  private final int[] failedSoFar;

  private Trying(CutTask first, HeldStates held, Draws draws) {
    this.first = first;
    this.held = held;
    this.draws = draws;
    int states = held.drawn().size();
    this.failedSoFar = new int[states];
    this.worstFirst = new Integer[states];
    Arrays.setAll(worstFirst, i -> i);
  }

  /** What chips and forces hang on: all of a cut but its speed. */
  private record Engaged(Operation operation, Cut.Feed feed, Quantity axial, Quantity radial) {
    static Engaged of(CutAsked cut) {
      return new Engaged(cut.operation(), cut.feed(), cut.axial(), cut.radial());
    }
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
   * failed that the probability asked is out of reach. The draws that most cuts failed on come
   * first, so that a cut which cannot keep its limits is seen through soon.
   *
   * @param cut all else as in the task
   */
  public Tried tried(CutAsked cut) {
    return tried(cut, fewestToReject());
  }

  /** As {@link #tried}, in every draw, however many fail. */
  public Tried triedThrough(CutAsked cut) {
    return tried(cut, Integer.MAX_VALUE);
  }

  private Tried tried(CutAsked cut, int enough) {
    CutTask task = first.with(cut);
    List<LimitCheck> checks = judged(task);
    List<CutState> states = CutStates.drawn(cut, held.drawn(), draws);
    CutOutcome[] outcomes = outcomes(task);
    Map<String, Integer> failures = new LinkedHashMap<>();
    int failed = 0;
    int looked = 0;
    while (looked < states.size() && failed < enough) {
      int i = worstFirst[looked];
      CutOutcome outcome = outcomes[i].at(states.get(i));
      Optional<String> fails = fails(checks, outcome);
      outcomes[i] = outcome;
      looked++;
      if (fails.isPresent()) {
        failed++;
        failedSoFar[i]++;
        failures.merge(fails.get(), 1, Integer::sum);
      }
    }
    Arrays.sort(worstFirst, Comparator.comparingInt(i -> -failedSoFar[i]));
    return new Tried(1 - (double) failed / states.size(), looked, failures);
  }

  /** The outcomes of the same chips at whatever speed was tried last. */
  private CutOutcome[] outcomes(CutTask task) {
    return task.cut().feed() instanceof Cut.FeedPerTooth
        ? known.computeIfAbsent(Engaged.of(task.cut()), engaged -> fresh(task))
        : fresh(task);
  }

  private CutOutcome[] fresh(CutTask task) {
    CutState central = CutStates.central(task.cut(), held.central()).get(0);
    boolean feedback = CutReadings.bendingMissing(task).isEmpty() && Feedback.counts(central);
    Bending bending = new Bending();
    return CutStates.drawn(task.cut(), held.drawn(), draws).stream()
        .map(state -> CutOutcome.coarse(state, feedback, bending))
        .toArray(CutOutcome[]::new);
  }

  /**
   * How far a cut is from keeping its limits: the most that any value is past what is allowed, over
   * what is allowed, on the average of the draws that most cuts failed on.
   *
   * @param cut all else as in the task
   * @return negative where all are kept; infinite where the nose finds no rest
   */
  public double excess(CutAsked cut) {
    CutTask task = first.with(cut);
    List<LimitCheck> checks = judged(task);
    List<CutState> states = CutStates.drawn(cut, held.drawn(), draws);
    CutOutcome[] outcomes = outcomes(task);
    int count = Math.min(states.size(), fewestToReject());
    double sum = 0;
    for (int k = 0; k < count; k++) {
      int i = worstFirst[k];
      CutOutcome outcome = outcomes[i].at(states.get(i));
      sum += checks.stream().mapToDouble(c -> c.excess(outcome)).max().orElse(0);
      outcomes[i] = outcome;
    }
    return sum / count;
  }

  private static List<LimitCheck> judged(CutTask task) {
    return LimitChecks.of(task, Optional.empty()).stream().filter(LimitCheck::judged).toList();
  }

  /** So many draws must fail before a cut is given up. */
  private int fewestToReject() {
    return (int) Math.floor((1 - Limit.ASKED) * held.drawn().size() + 1e-9) + 1;
  }

  private static Optional<String> fails(List<LimitCheck> checks, CutOutcome outcome) {
    return checks.stream()
        .filter(check -> !check.holds(outcome, 0))
        .map(LimitCheck::code)
        .findFirst();
  }
}
