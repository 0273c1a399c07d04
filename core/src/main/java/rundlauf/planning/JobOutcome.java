package rundlauf.planning;

import rundlauf.bench.Job;
import rundlauf.quantity.Refused;

/** What became of a job: its plan, or why there is none. */
public sealed interface JobOutcome {
  Job job();

  /** A job that was planned. */
  record Planned(JobPlan plan) implements JobOutcome {
    @Override
    public Job job() {
      return plan.job();
    }
  }

  /** A job that could not be understood. */
  record Unplannable(Job job, Refused refused) implements JobOutcome {}
}
