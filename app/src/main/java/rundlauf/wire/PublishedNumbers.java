package rundlauf.wire;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** The numbers of a trial as they stand in a document of figures. */
public final class PublishedNumbers {
  private PublishedNumbers() {}

  /**
   * A trial.
   *
   * @param method version of the method; 0 where none is said
   * @param error code of its refusal
   */
  public record Trial(int method, Map<String, Numbers> figures, Optional<String> error) {
    public Trial {
      figures = Collections.unmodifiableMap(new LinkedHashMap<>(figures));
    }
  }

  /** A figure in its unit; the numbers are 0 where it is not known. */
  public record Numbers(
      String unit, boolean known, double value, double u, double low, double high) {}

  /** What stands in one trial of the document. */
  public static Trial of(JsonNode trial) {
    Map<String, Numbers> figures = new LinkedHashMap<>();
    trial.path("figures").properties().forEach(f -> figures.put(f.getKey(), numbers(f.getValue())));
    JsonNode error = trial.path("error").path("code");
    return new Trial(
        trial.path("method").path("version").asInt(),
        figures,
        error.isTextual() ? Optional.of(error.asText()) : Optional.empty());
  }

  private static Numbers numbers(JsonNode figure) {
    return new Numbers(
        figure.path("unit").asText(),
        figure.path("value").isNumber(),
        figure.path("value").asDouble(),
        figure.path("u").asDouble(),
        figure.path("low").asDouble(),
        figure.path("high").asDouble());
  }
}
