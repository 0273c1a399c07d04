package rundlauf.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rundlauf.bench.Bench;
import rundlauf.planning.JobPlan;
import rundlauf.quantity.Saying;

/** Every job of the bench: which setup for it, with which cut, and why. */
final class JobsSection {
  private static final String ID = "jobs";

  private JobsSection() {}

  /** The section; empty where nothing was planned. */
  static Optional<Section> section(Bench bench, List<JobPlan> plans) {
    if (plans.isEmpty()) {
      return Optional.empty();
    }
    List<Section> parts = new ArrayList<>();
    for (JobPlan plan : plans) {
      parts.add(JobPart.section(bench, plan, parts.size() + 1));
    }
    Block intro =
        Remarks.of(
            Remarks.Tone.CAUTION,
            List.of(Saying.of("report-jobs-intro", ""), Saying.of("chatter-not-examined", "")));
    return Optional.of(new Section(ID, Saying.of("report-jobs", ""), List.of(intro), parts));
  }
}
