package rundlauf.usecase;

import java.util.Optional;
import rundlauf.bench.Bench;
import rundlauf.bench.Cut;

/** Where cuts are read from. */
public interface CutSource {
  /**
   * A cut as it was typed, and the bench whose setup it names.
   *
   * @param file as the user named it
   * @throws rundlauf.quantity.Refused when it, or its bench, cannot be read
   */
  Sourced read(String file);

  /** A cut; its bench when its setup is of one. */
  record Sourced(Cut cut, Optional<Bench> bench) {}
}
