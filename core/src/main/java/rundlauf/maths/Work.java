package rundlauf.maths;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * What a long function is given to run its parts with, to tell how far it is, and to learn that it
 * should stop. Item i draws from (seed, i), so the digits do not depend on who runs the parts.
 */
public interface Work {
  /** Applies {@code f} to every item; results in the order of the items. */
  <T, R> List<R> map(List<T> items, Function<? super T, ? extends R> f);

  /** Tells that {@code done} of {@code of} steps are done. */
  void step(int done, int of);

  /**
   * To be called now and then.
   *
   * @throws Stopped when the work is no longer wanted
   */
  void check();

  /** One after the other, on the caller's thread, never stopped. */
  static Work sequential() {
    return new Work() {
      @Override
      public <T, R> List<R> map(List<T> items, Function<? super T, ? extends R> f) {
        List<R> results = new ArrayList<>(items.size());
        for (T item : items) {
          results.add(f.apply(item));
        }
        return results;
      }

      @Override
      public void step(int done, int of) {
        // nobody is listening
      }

      @Override
      public void check() {
        // never stopped
      }
    };
  }
}
