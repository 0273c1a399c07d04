package rundlauf.planning;

import java.util.ArrayList;
import java.util.List;
import rundlauf.bench.Bench;
import rundlauf.bench.Job;
import rundlauf.maths.Draws;
import rundlauf.maths.Work;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Saying;

/** Plans jobs: the best cut on each setup of a bench, and the setups ranked. */
public final class Planning {
  /** Joint draws that every cut is tried with by default; our choice: 0.95 is then told to 2 %. */
  public static final int STATES = 128;

  private Planning() {}

  /**
   * A job on every setup of a bench: the quickest cut of a plain grid that keeps every limit known
   * with the probability asked, over joint draws that all cuts and setups share.
   *
   * @param job of the bench, or of a file of its own
   * @param knowledge of the setups, by the same {@code draws}
   * @param states joint draws, at most {@code draws.count()}
   * @return setups best first, held ones last; of one on which no cut keeps every limit the nearest
   *     miss
   * @throws rundlauf.quantity.Refused for what the job lacks, and for names nobody knows
   * @see "docs/methods/plan.md"
   */
  public static JobPlan plan(
      Bench bench, Job job, Knowledge knowledge, Draws draws, int states, Work work) {
    JobTask task = JobTasks.of(job, bench);
    List<Ranked> all =
        work.map(
            bench.setups(),
            setup -> SetupPlanning.plan(task, bench, setup, knowledge, draws, states, work));
    List<SetupPlan> setups = all.stream().sorted().map(Ranked::plan).toList();
    return new JobPlan(job, setups, cautions(task), Advice.of(task, setups));
  }

  private static List<Saying> cautions(JobTask task) {
    List<Saying> cautions = new ArrayList<>();
    cautions.add(Saying.of("chatter-not-examined", "stability"));
    if (task.feature() == Feature.DRILL) {
      cautions.add(Saying.of("drilling-not-predicted", "feature", Arg.of(task.job().name())));
      return cautions;
    }
    cautions.add(
        task.length().isPresent()
            ? Saying.of("time-of-passes-only", "time")
            : Saying.of("time-without-length", "time"));
    if (task.tolerance().isEmpty()) {
      cautions.add(Saying.of("job-without-tolerance", "wallError"));
    }
    return cautions;
  }
}
