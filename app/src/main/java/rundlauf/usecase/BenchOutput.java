package rundlauf.usecase;

import java.util.function.Function;
import rundlauf.report.BenchReport;
import rundlauf.report.Report;

/** What a bench of the store gives away: its report as one page, and its package. */
public final class BenchOutput {
  private final KeptResults results;
  private final ExportBench exportBench;
  private final Function<Report, String> page;

  /**
   * @param page what makes a page of a report
   */
  public BenchOutput(KeptResults results, ExportBench exportBench, Function<Report, String> page) {
    this.results = results;
    this.exportBench = exportBench;
    this.page = page;
  }

  /** The report with every job planned; it takes some seconds. */
  public String report(String bench) {
    return page.apply(BenchReport.of(results.results(bench), results.plans(bench)));
  }

  /** The package as a ZIP. */
  public byte[] zip(String bench) {
    return exportBench.zip(bench);
  }
}
