package rundlauf.usecase;

import java.util.function.Function;
import rundlauf.maths.Draws;
import rundlauf.maths.Work;
import rundlauf.report.BenchReport;
import rundlauf.report.BenchResults;
import rundlauf.report.Report;

/** Publishes what a bench has measured as one page. */
public final class PublishReport {
  /** The page's name. */
  private static final String PAGE = "report.html";

  private final BenchSource source;
  private final Function<Report, String> page;
  private final Publication publication;
  private final Work work;

  /**
   * @param source where the bench is read from
   * @param page what makes a page of a report
   * @param publication where the page is kept
   * @param work told of the trials done
   */
  public PublishReport(
      BenchSource source, Function<Report, String> page, Publication publication, Work work) {
    this.source = source;
    this.page = page;
    this.publication = publication;
    this.work = work;
  }

  /**
   * Reduces every trial and publishes the report; a trial that is refused stands in it with its
   * refusal.
   *
   * @param bench as the user named it
   * @return where the page lies
   * @throws rundlauf.quantity.Refused when the bench cannot be read or the page not be kept
   */
  public String publish(String bench, Draws draws) {
    BenchResults results = BenchOutcomes.of(source.bench(bench), draws, work);
    return publication.keep(PAGE, page.apply(BenchReport.of(results)));
  }
}
