package rundlauf.usecase;

import rundlauf.bench.Bench;

/** Where benches are read from. */
public interface BenchSource {
  /**
   * A bench with its trials, as they were typed.
   *
   * @param folder as the user named it: a folder with {@code bench.yaml}, or a ZIP of it
   * @throws rundlauf.quantity.Refused when it cannot be read
   */
  Bench bench(String folder);
}
