package rundlauf.usecase;

import rundlauf.maths.Draws;
import rundlauf.maths.Work;
import rundlauf.report.BenchComparison;

/** Sets every setup of a bench side by side. */
public final class CompareBench {
  private final BenchSource source;
  private final Work work;

  public CompareBench(BenchSource source, Work work) {
    this.source = source;
    this.work = work;
  }

  /**
   * Reduces every trial of a bench with the same draws and compares the setups; a refused trial is
   * told of and stops nothing.
   *
   * @param bench as the user named it
   * @throws rundlauf.quantity.Refused when the bench cannot be read
   */
  public BenchComparison compare(String bench, Draws draws) {
    return BenchComparison.of(BenchOutcomes.of(source.bench(bench), draws, work));
  }
}
