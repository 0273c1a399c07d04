package rundlauf.usecase;

import java.util.List;
import java.util.function.Function;
import rundlauf.planning.JobOutcome;
import rundlauf.report.BenchReport;
import rundlauf.report.BenchResults;
import rundlauf.report.Report;

/** Publishes what a bench has measured as one page. */
public final class PublishReport {
  /** The page's name. */
  private static final String PAGE = "report.html";

  private final Function<Report, String> page;
  private final Publication publication;

  /**
   * @param page what makes a page of a report
   * @param publication where the page is kept
   */
  public PublishReport(Function<Report, String> page, Publication publication) {
    this.page = page;
    this.publication = publication;
  }

  /**
   * Publishes the report; a trial or a job that was refused stands in it with its refusal.
   *
   * @param jobs of the bench, as they were planned; none: the report is without them
   * @return where the page lies
   * @throws rundlauf.quantity.Refused when the page cannot be kept
   */
  public String publish(BenchResults results, List<JobOutcome> jobs) {
    return publication.keep(PAGE, page.apply(BenchReport.of(results, jobs)));
  }
}
