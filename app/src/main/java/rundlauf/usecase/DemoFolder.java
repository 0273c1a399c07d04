package rundlauf.usecase;

import java.util.Optional;

/** Where the demo bench is laid out. */
public interface DemoFolder {
  /**
   * Lays the demo bench out in a folder of its own.
   *
   * @param asked the folder as the user named it; empty: a fresh one is made where temporary files
   *     go
   * @throws rundlauf.quantity.Refused when something already lies in it, or it cannot be written
   */
  Laid lay(Optional<String> asked);

  /**
   * A demo laid out.
   *
   * @param folder all of it
   * @param bench the bench within it
   */
  record Laid(String folder, String bench) {}
}
