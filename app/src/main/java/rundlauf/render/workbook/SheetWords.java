package rundlauf.render.workbook;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rundlauf.render.Wording;

/** The words that a sheet's script says. */
public final class SheetWords {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final List<String> REASONS =
      List.of("needle-stuck", "bumped", "misread", "wrong-place");

  private static final List<String> NAMES =
      List.of(
          "count",
          "beyond",
          "away",
          "away-unkept",
          "trouble",
          "trouble-unkept",
          "out",
          "waiting",
          "anew",
          "leave");

  private SheetWords() {}

  /** As JSON that is safe inside a script element; {@code {0}} stands where something comes. */
  public static String of(Wording words) {
    Map<String, String> said = new LinkedHashMap<>();
    for (String name : NAMES) {
      said.put(camel(name), words.pattern("sheet-script-" + name));
    }
    try {
      return JSON.writeValueAsString(said).replace("<", "\\u003c");
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("words that cannot be written", e);
    }
  }

  private static String camel(String name) {
    return name.replace("-unkept", "Unkept");
  }

  /** Why readings are often struck out. */
  public static List<String> reasons(Wording words) {
    return REASONS.stream().map(reason -> words.word("sheet-reason-" + reason)).toList();
  }
}
