package rundlauf.usecase;

import java.util.List;
import java.util.function.Function;
import rundlauf.maths.Stopped;
import rundlauf.maths.Work;

/** Long work that somebody waits for: how far it is, and whether it is still wanted. */
final class Run implements Work {
  private final Work work;
  private volatile Progress progress = new Progress(0, 0);
  private volatile boolean stopped;

  /**
   * @param work that runs its parts
   */
  Run(Work work) {
    this.work = work;
  }

  @Override
  public <T, R> List<R> map(List<T> items, Function<? super T, ? extends R> f) {
    return work.map(
        items,
        item -> {
          check();
          return f.apply(item);
        });
  }

  /** Parts that run side by side may tell it out of order; it never goes back. */
  @Override
  public synchronized void step(int done, int of) {
    if (done > progress.done()) {
      progress = new Progress(done, of);
    }
    work.step(done, of);
  }

  @Override
  public void check() {
    if (stopped) {
      throw new Stopped();
    }
    work.check();
  }

  Progress progress() {
    return progress;
  }

  /** It is no longer wanted: whoever waits for it gets {@link Stopped}. */
  void stop() {
    stopped = true;
  }
}
