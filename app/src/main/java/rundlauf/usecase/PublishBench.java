package rundlauf.usecase;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Function;
import rundlauf.bench.Bench;
import rundlauf.maths.Draws;
import rundlauf.planning.JobOutcome;
import rundlauf.planning.Planning;
import rundlauf.report.BenchComparison;
import rundlauf.report.BenchReport;
import rundlauf.report.BenchResults;
import rundlauf.report.Outcome;
import rundlauf.report.Report;

/** Publishes a bench: its report, and the package from which anyone can recompute it. */
public final class PublishBench {
  private static final String PAGE = "report.html";
  private static final String FOLDER = "package";
  private static final String ZIP = "package.zip";

  private final ContentsSource source;
  private final ContentsTarget target;
  private final BenchPackage packages;
  private final PlanBench planBench;
  private final Function<Report, String> page;

  /**
   * @param page what makes a page of a report
   */
  public PublishBench(
      ContentsSource source,
      ContentsTarget target,
      BenchPackage packages,
      PlanBench planBench,
      Function<Report, String> page) {
    this.source = source;
    this.target = target;
    this.packages = packages;
    this.planBench = planBench;
    this.page = page;
  }

  /**
   * What was written.
   *
   * @param files of the package
   * @param comparison what was found in it
   */
  public record Published(String folder, List<String> files, BenchComparison comparison) {
    public Published {
      files = List.copyOf(files);
    }
  }

  /**
   * Writes {@code report.html}, the folder {@code package} and {@code package.zip}.
   *
   * @param bench a folder or a ZIP of it, as the user named it
   * @param out a folder, new or empty
   * @throws rundlauf.quantity.Refused when the bench cannot be read, or the folder is used
   */
  public Published publish(String bench, String out, Draws draws) {
    target.requireFresh(out);
    BenchContents contents = source.contents(bench);
    Bench read = packages.bench(contents);
    List<Outcome> outcomes = packages.outcomes(read, draws);
    BenchResults results = BenchOutcomes.compared(read, outcomes, draws);
    List<JobOutcome> jobs = planBench.plan(results, draws, Planning.STATES);
    BenchContents packed = packages.of(contents, read, outcomes, draws);
    String text = page.apply(BenchReport.of(results, jobs));
    target.write(out, PAGE, text.getBytes(StandardCharsets.UTF_8));
    target.write(out + "/" + FOLDER, packed);
    target.write(out, ZIP, target.zip(packed));
    return new Published(out, packed.paths(), BenchComparison.of(results));
  }
}
