package rundlauf.usecase;

import java.util.Optional;
import rundlauf.bench.Bench;
import rundlauf.bench.Trial;

/** Where trials are read from. */
public interface TrialSource {
  /**
   * A trial as it was typed, and the bench whose names it may use.
   *
   * @param file as the user named it
   * @throws rundlauf.quantity.Refused when it cannot be read
   */
  Sourced read(String file);

  /** A trial; its bench when it lies in one. */
  record Sourced(Trial trial, Optional<Bench> bench) {}
}
