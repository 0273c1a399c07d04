package rundlauf.usecase;

import java.util.List;
import rundlauf.bench.Bench;
import rundlauf.bench.Job;
import rundlauf.bench.Nearest;
import rundlauf.maths.Draws;
import rundlauf.maths.Work;
import rundlauf.planning.JobPlan;
import rundlauf.planning.Planning;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;
import rundlauf.report.Outcome;

/** Plans a job on every setup of a bench. */
public final class PlanJob {
  private final BenchSource benches;
  private final JobSource jobs;
  private final Work work;

  public PlanJob(BenchSource benches, JobSource jobs, Work work) {
    this.benches = benches;
    this.jobs = jobs;
    this.work = work;
  }

  /**
   * The best cut for a job on each setup, and the setups ranked.
   *
   * @param job the name of a job of the bench; else a file that says one
   * @param bench as the user named it
   * @param draws that everything is drawn with
   * @param states how many of them every cut is tried with, at most {@code draws.count()}
   * @throws Refused when bench or job cannot be read, or the job lacks what a plan needs; a trial
   *     that is refused is a caution
   */
  public JobPlan plan(String job, String bench, Draws draws, int states) {
    Bench owned = benches.bench(bench);
    Job asked = owned.job(job).or(() -> jobs.job(job)).orElseThrow(() -> unknown(job, owned));
    List<Outcome> outcomes = BenchOutcomes.reduced(owned, draws, work);
    var knowledge = BenchKnowledge.of(owned, outcomes, draws);
    return Planning.plan(owned, asked, knowledge, draws, states, work);
  }

  private static Refused unknown(String job, Bench bench) {
    List<String> names = bench.jobs().stream().map(Job::name).toList();
    Place place = Place.of(job);
    return names.isEmpty()
        ? Refused.at(place, "job-missing-none-defined", Arg.typed(job))
        : Refused.at(place, "job-missing", Arg.typed(job), Arg.list(Nearest.first(job, names)));
  }
}
