package rundlauf.files;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;

/** Says in the words of a user what the YAML parser found; it speaks to programmers. */
final class YamlMistake {
  /** By a part of the parser's message; the first that fits. */
  private static final Map<String, String> CODES = codes();

  private YamlMistake() {}

  private static Map<String, String> codes() {
    Map<String, String> codes = new LinkedHashMap<>();
    codes.put("mapping values are not allowed", "yaml-colon");
    codes.put("(TAB)", "yaml-tab");
    codes.put("cannot start any token", "yaml-sign");
    codes.put("expected <block end>", "yaml-line-out-of-place");
    return codes;
  }

  static Refused of(MarkedYamlEngineException wrong, String file) {
    String problem = String.valueOf(wrong.getProblem());
    String context = String.valueOf(wrong.getContext());
    if (context.contains("flow mapping") || context.contains("flow sequence")) {
      return Refused.at(place(wrong.getContextMark(), file), "yaml-bracket-open");
    }
    if (context.contains("quoted scalar")) {
      return Refused.at(place(wrong.getContextMark(), file), "yaml-quote-open");
    }
    if (problem.contains("could not find expected ':'")) {
      return Refused.at(place(wrong.getContextMark(), file), "yaml-colon-missing");
    }
    String code =
        CODES.entrySet().stream()
            .filter(e -> problem.contains(e.getKey()))
            .map(Map.Entry::getValue)
            .findFirst()
            .orElse("yaml-not-read");
    return Refused.at(place(wrong.getProblemMark(), file), code, Arg.typed(problem));
  }

  private static Place place(Optional<Mark> mark, String file) {
    return mark.map(m -> new Place(file, m.getLine() + 1, m.getColumn() + 1, ""))
        .orElse(Place.of(file));
  }
}
