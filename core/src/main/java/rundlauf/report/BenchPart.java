package rundlauf.report;

import java.util.List;
import java.util.Optional;
import rundlauf.bench.Bench;
import rundlauf.planning.JobOutcome;
import rundlauf.quantity.Saying;

/** Parts of a bench's report that stand alone; their links lead to the ids of the whole report. */
public final class BenchPart {
  private BenchPart() {}

  /** What stands above everything, such as that the data are invented. */
  public static List<Saying> notices(BenchResults results) {
    return BenchReport.notices(results);
  }

  /** What must be read before anything else. */
  public static Section cautions(BenchResults results) {
    return Cautions.section(results, BenchReport.sheets(results));
  }

  /** Every setup with its figures. */
  public static Section sideBySide(BenchResults results) {
    return SideBySide.section(results, BenchReport.sheets(results));
  }

  /** The setups against each other, with their odds. */
  public static Section differences(BenchResults results) {
    return Differences.section(results, BenchReport.sheets(results));
  }

  /** Every job with its ranking; empty where nothing was planned. */
  public static Optional<Section> jobs(Bench bench, List<JobOutcome> jobs) {
    return JobsSection.section(bench, jobs);
  }

  /** The best setup for every job; of at least one job. */
  public static Section best(Bench bench, List<JobOutcome> jobs) {
    return BestTable.section(bench, jobs);
  }

  /** A trial in words. */
  public static Saying heading(Bench bench, Outcome outcome) {
    return TrialPart.heading(BenchReport.sheet(bench, outcome, 1));
  }

  /** One trial: its figures, then what was typed. Its number is 1. */
  public static List<Section> trial(Bench bench, Outcome outcome) {
    Sheet sheet = BenchReport.sheet(bench, outcome, 1);
    return List.of(TrialPart.section(sheet), AsTyped.sheet(sheet));
  }
}
