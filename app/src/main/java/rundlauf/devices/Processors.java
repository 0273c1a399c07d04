package rundlauf.devices;

import java.util.List;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.function.Function;
import rundlauf.maths.Work;

/** Runs the parts of long work side by side, as many at a time as there are processors. */
public final class Processors implements Work {
  private final ForkJoinPool pool = new ForkJoinPool(Runtime.getRuntime().availableProcessors());

  /** Parts may have parts of their own: whoever waits for some runs others meanwhile. */
  @Override
  public <T, R> List<R> map(List<T> items, Function<? super T, ? extends R> f) {
    if (ForkJoinTask.getPool() == pool) {
      return all(items, f);
    }
    return pool.invoke(ForkJoinTask.adapt(() -> Processors.<T, R>all(items, f)));
  }

  private static <T, R> List<R> all(List<T> items, Function<? super T, ? extends R> f) {
    List<ForkJoinTask<R>> tasks =
        items.stream().map(item -> ForkJoinTask.<R>adapt(() -> f.apply(item)).fork()).toList();
    return tasks.stream().map(ForkJoinTask::join).toList();
  }

  @Override
  public void step(int done, int of) {
    // nobody is listening
  }

  @Override
  public void check() {
    // never stopped
  }
}
