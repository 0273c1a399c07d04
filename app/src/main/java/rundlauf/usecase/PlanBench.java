package rundlauf.usecase;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import rundlauf.bench.Job;
import rundlauf.maths.Draws;
import rundlauf.maths.Work;
import rundlauf.planning.JobOutcome;
import rundlauf.planning.Knowledge;
import rundlauf.planning.Planning;
import rundlauf.quantity.Refused;
import rundlauf.report.BenchResults;

/** Plans every job of a bench. */
public final class PlanBench {
  private final Work work;

  public PlanBench(Work work) {
    this.work = work;
  }

  /**
   * Every job in the order of the bench; a refused one keeps its refusal and stops no other.
   *
   * @param results of the bench's trials, reduced with {@code draws}
   * @param states how many of the draws every cut is tried with
   */
  public List<JobOutcome> plan(BenchResults results, Draws draws, int states) {
    Knowledge knowledge = BenchKnowledge.of(results.bench(), results.outcomes(), draws);
    List<Job> jobs = results.bench().jobs();
    Work told = told(jobs.size() * results.bench().setups().size());
    return work.map(jobs, job -> outcome(job, results, knowledge, draws, states, told));
  }

  /** Tells of every setup that was tried for a job. */
  private Work told(int of) {
    var done = new AtomicInteger();
    return new Work() {
      @Override
      public <T, R> List<R> map(List<T> items, Function<? super T, ? extends R> f) {
        return work.map(
            items,
            item -> {
              R result = f.apply(item);
              step(done.incrementAndGet(), of);
              return result;
            });
      }

      @Override
      public void step(int done, int of) {
        work.step(done, of);
      }

      @Override
      public void check() {
        work.check();
      }
    };
  }

  private static JobOutcome outcome(
      Job job, BenchResults results, Knowledge knowledge, Draws draws, int states, Work work) {
    try {
      return new JobOutcome.Planned(
          Planning.plan(results.bench(), job, knowledge, draws, states, work));
    } catch (Refused refused) {
      return new JobOutcome.Unplannable(job, refused);
    }
  }
}
