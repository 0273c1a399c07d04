package rundlauf.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rundlauf.bench.Bench;
import rundlauf.planning.JobOutcome;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Saying;

/** Every job of the bench: which setup for it, with which cut, and why. */
final class JobsSection {
  private static final String ID = "jobs";

  private JobsSection() {}

  /** The section; empty where nothing was planned. */
  static Optional<Section> section(Bench bench, List<JobOutcome> jobs) {
    if (jobs.isEmpty()) {
      return Optional.empty();
    }
    List<Section> parts = new ArrayList<>();
    for (JobOutcome job : jobs) {
      int number = parts.size() + 1;
      parts.add(
          job instanceof JobOutcome.Planned planned
              ? JobPart.section(bench, planned.plan(), number)
              : refused((JobOutcome.Unplannable) job, number));
    }
    Block intro =
        Remarks.of(
            Remarks.Tone.CAUTION,
            List.of(Saying.of("report-jobs-intro", ""), Saying.of("chatter-not-examined", "")));
    return Optional.of(new Section(ID, Saying.of("report-jobs", ""), List.of(intro), parts));
  }

  private static Section refused(JobOutcome.Unplannable job, int number) {
    Saying said = job.refused().saying();
    Saying remedy = new Saying(said.code() + ".remedy", said.about(), said.args());
    return Section.of(
        JobPart.id(number),
        Saying.of("report-name", "", Arg.of(job.job().name())),
        List.of(
            Remarks.of(
                Remarks.Tone.CAUTION, List.of(Saying.of("report-job-refused", ""), said, remedy))));
  }
}
