package rundlauf.usecase;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The figures of a package as they were published.
 *
 * @param program the version that made them
 * @param seed and {@code draws}: what was drawn with
 * @param trials by their files
 */
public record PublishedFigures(
    String program, long seed, int draws, Map<String, PublishedTrial> trials) {
  public PublishedFigures {
    trials = Collections.unmodifiableMap(new LinkedHashMap<>(trials));
  }

  /**
   * A trial's figures.
   *
   * @param method version of the method
   * @param figures by their paths; none where the trial was refused
   * @param error code of the refusal
   */
  public record PublishedTrial(
      int method, Map<String, PublishedFigure> figures, Optional<String> error) {
    public PublishedTrial {
      figures = Collections.unmodifiableMap(new LinkedHashMap<>(figures));
    }
  }

  /**
   * A figure; all numbers in its unit.
   *
   * @param known empty where it could not be had
   */
  public record PublishedFigure(String unit, Optional<Numbers> known) {}

  /** Value, standard uncertainty and interval. */
  public record Numbers(double value, double u, double low, double high) {}
}
