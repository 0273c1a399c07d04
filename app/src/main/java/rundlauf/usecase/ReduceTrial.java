package rundlauf.usecase;

import rundlauf.maths.Draws;
import rundlauf.maths.Work;
import rundlauf.reduce.Reduced;

/** Reduces one trial: its readings in, its figures out. */
public final class ReduceTrial {
  private final TrialSource source;
  private final Work work;

  public ReduceTrial(TrialSource source, Work work) {
    this.source = source;
    this.work = work;
  }

  /**
   * The figures of a trial of any kind.
   *
   * @param file as the user named it
   * @throws rundlauf.quantity.Refused when it cannot be read or cannot bear its figures
   */
  public Reduced reduce(String file, Draws draws) {
    var sourced = source.read(file);
    Reduced result = Reduction.of(sourced.trial(), sourced.bench(), draws, work);
    return sourced
        .bench()
        .map(bench -> result.withCautions(Hold.cautions(bench, result, draws, work)))
        .orElse(result);
  }
}
