package rundlauf.usecase;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Supplier;
import rundlauf.maths.Stopped;

/**
 * Values that were worked out before, as many as there is room for; who asks for one that is being
 * worked out waits for it. Any number of threads may ask.
 */
final class Memo<K, V> {
  private final Map<K, FutureTask<V>> known;

  /**
   * @param most how many are kept; the one that was not asked for longest goes first
   */
  Memo(int most) {
    this.known =
        new LinkedHashMap<>(16, 0.75f, true) {
          private static final long serialVersionUID = 1L;

          @Override
          protected boolean removeEldestEntry(Map.Entry<K, FutureTask<V>> eldest) {
            return size() > most;
          }
        };
  }

  /**
   * The value of a key, worked out by {@code work} where it is not known.
   *
   * @throws Stopped when that was stopped, or the thread that waits for it
   */
  V get(K key, Supplier<V> work) {
    FutureTask<V> task;
    synchronized (known) {
      task = known.computeIfAbsent(key, k -> new FutureTask<>(work::get));
    }
    task.run(); // does nothing where it ran or runs
    try {
      return task.get();
    } catch (ExecutionException failed) {
      synchronized (known) {
        known.remove(key, task);
      }
      if (failed.getCause() instanceof RuntimeException cause) {
        throw cause;
      }
      throw new IllegalStateException(failed.getCause());
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new Stopped();
    }
  }
}
