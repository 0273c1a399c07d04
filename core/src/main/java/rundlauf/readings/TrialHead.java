package rundlauf.readings;

import java.util.Map;
import java.util.Optional;
import rundlauf.bench.FileName;

/**
 * What every trial says about itself.
 *
 * @param file as the user named it
 * @param kind runout, side-load, axial, growth, speed, inspection
 * @param title as given
 * @param date as given
 * @param setup the bench's name of what was measured
 * @param conditions by name as given: warm-up, temperature, nut, cleaned, pin, turned-by, rotor
 */
public record TrialHead(
    String file,
    String kind,
    Optional<String> title,
    Optional<String> date,
    Optional<String> setup,
    Map<String, String> conditions) {
  public TrialHead {
    conditions = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(conditions));
  }

  /**
   * The file's own name, without the folders; begins the id of every cause that belongs to this
   * trial alone.
   */
  public String name() {
    return FileName.of(file);
  }
}
