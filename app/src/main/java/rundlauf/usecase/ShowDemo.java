package rundlauf.usecase;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import rundlauf.maths.Draws;
import rundlauf.planning.JobOutcome;
import rundlauf.planning.Planning;
import rundlauf.report.BenchComparison;

/** Shows what the program does, on the invented bench it carries. */
public final class ShowDemo {
  private final DemoFolder folders;
  private final CompareBench compareBench;
  private final PlanBench planBench;
  private final Function<String, PublishReport> publishReport;

  /**
   * @param folders where the bench is laid out
   * @param publishReport what publishes the report, by the folder
   */
  public ShowDemo(
      DemoFolder folders,
      CompareBench compareBench,
      PlanBench planBench,
      Function<String, PublishReport> publishReport) {
    this.folders = folders;
    this.compareBench = compareBench;
    this.planBench = planBench;
    this.publishReport = publishReport;
  }

  /**
   * What there is to see.
   *
   * @param laid where the bench lies
   * @param comparison its setups side by side
   * @param jobs of the bench, planned
   * @param report where the report lies
   */
  public record Shown(
      DemoFolder.Laid laid, BenchComparison comparison, List<JobOutcome> jobs, String report) {
    public Shown {
      jobs = List.copyOf(jobs);
    }
  }

  /**
   * Lays the bench out, reduces every trial, compares its setups, plans its jobs and publishes the
   * report.
   *
   * @param asked the folder as the user named it; empty: a fresh one
   * @throws rundlauf.quantity.Refused when the folder is not fresh or cannot be written
   */
  public Shown show(Optional<String> asked, Draws draws) {
    DemoFolder.Laid laid = folders.lay(asked);
    BenchComparison comparison = compareBench.compare(laid.bench(), draws);
    List<JobOutcome> jobs = planBench.plan(comparison.results(), draws, Planning.STATES);
    String report = publishReport.apply(laid.folder()).publish(comparison.results(), jobs);
    return new Shown(laid, comparison, jobs, report);
  }
}
