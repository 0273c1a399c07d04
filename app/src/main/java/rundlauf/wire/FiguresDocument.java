package rundlauf.wire;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import rundlauf.maths.Draws;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;
import rundlauf.quantity.Saying;
import rundlauf.readings.TrialKind;
import rundlauf.reduce.Method;
import rundlauf.report.Outcome;

/** {@code figures.json}: every derived figure of a bench, with its method and version. */
public final class FiguresDocument {
  private static final ObjectMapper JSON = new ObjectMapper();

  private FiguresDocument() {}

  /**
   * The document, one trial a line.
   *
   * @param program its version
   * @param wording the sentence of a saying
   */
  public static String of(
      String program, List<Outcome> outcomes, Draws draws, Function<Saying, String> wording) {
    StringBuilder out = new StringBuilder();
    out.append("{\"rundlauf\": \"").append(program).append("\", \"seed\": ").append(draws.seed());
    out.append(", \"draws\": ").append(draws.count()).append(", \"trials\": [");
    List<String> lines = new ArrayList<>();
    outcomes.forEach(outcome -> lines.add(line(outcome, wording)));
    out.append(lines.isEmpty() ? "" : "\n").append(String.join(",\n", lines));
    return out.append("\n]}\n").toString();
  }

  private static String line(Outcome outcome, Function<Saying, String> wording) {
    String file = outcome.trial().file();
    return JsonLine.of(
        wording,
        json -> {
          json.text("file", file);
          json.text("trial", outcome.trial().kind().strip());
          if (outcome instanceof Outcome.Unusable unusable) {
            Refused refused = unusable.refused();
            json.object(
                "error",
                () -> RefusalDocument.error(json, file, refused.saying(), refused.place()));
            return;
          }
          Method method = Method.of(TrialKind.of(outcome.trial()));
          json.object(
              "method",
              () -> {
                json.text("page", method.page());
                json.count("version", method.version());
              });
          json.object(
              "figures",
              () -> ((Outcome.Figures) outcome).reduced().figures().forEach(json::figure));
        });
  }

  /**
   * The figures of a document by the files of their trials.
   *
   * @param name of the document, for sentences
   * @throws Refused when it is not such a document
   */
  public static Read read(String text, String name) {
    JsonNode document = parse(text, name);
    Map<String, JsonNode> trials = new LinkedHashMap<>();
    for (JsonNode trial : document.path("trials")) {
      trials.put(trial.path("file").asText(), trial);
    }
    JsonNode draws = document.path("draws");
    boolean whole =
        document.path("trials").isArray()
            && document.path("seed").isIntegralNumber()
            && draws.isInt()
            && draws.asInt() >= 200
            && draws.asInt() <= 1_000_000;
    if (!whole) {
      throw refused(name, "");
    }
    return new Read(
        document.path("rundlauf").asText(), document.path("seed").asLong(), draws.asInt(), trials);
  }

  /** A document as it was read: each trial as it stands there. */
  public record Read(String program, long seed, int draws, Map<String, JsonNode> trials) {}

  static JsonNode parse(String text, String name) {
    try {
      JsonNode document = JSON.readTree(text);
      if (document != null && document.isObject()) {
        return document;
      }
    } catch (JsonProcessingException unreadable) {
      throw refused(name, String.valueOf(unreadable.getOriginalMessage()));
    }
    throw refused(name, "");
  }

  private static Refused refused(String name, String found) {
    return Refused.at(Place.of(name), "package-document", Arg.typed(found));
  }
}
