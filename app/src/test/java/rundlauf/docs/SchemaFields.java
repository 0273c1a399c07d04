package rundlauf.docs;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The fields that a schema knows. */
final class SchemaFields {
  private static final ObjectMapper JSON = new ObjectMapper();

  private SchemaFields() {}

  /**
   * Fields by path, with the words that each takes; none: any text of its kind.
   *
   * @param schema its file within {@code schemas/}
   * @param at where in it, as a JSON pointer
   */
  static Map<String, Set<String>> of(String schema, String at) throws IOException {
    Path file = Schemas.FOLDER.resolve(schema);
    Map<String, Set<String>> known = new LinkedHashMap<>();
    add("", file, JSON.readTree(file.toFile()).at(at), known);
    return known;
  }

  private static void add(String path, Path file, JsonNode at, Map<String, Set<String>> known)
      throws IOException {
    if (at.has("$ref")) {
      String[] ref = at.get("$ref").asText().split("#", 2);
      Path there = ref[0].isEmpty() ? file : file.resolveSibling(ref[0]);
      if (there.endsWith("quantities.json")) {
        known.putIfAbsent(path, new LinkedHashSet<>());
      } else {
        add(path, there, JSON.readTree(there.toFile()).at(ref[1]), known);
      }
    }
    if (at.path("type").asText().equals("array")) {
      known.putIfAbsent(path, new LinkedHashSet<>());
    }
    for (String word : List.of("enum", "const")) {
      at.path(word).forEach(e -> words(known, path).add(e.asText()));
    }
    if (at.path("const").isTextual()) {
      words(known, path).add(at.get("const").asText());
    }
    for (String of : List.of("oneOf", "anyOf", "allOf")) {
      for (JsonNode one : at.path(of)) {
        add(path, file, one, known);
      }
    }
    for (Map.Entry<String, JsonNode> field : fields(at.path("properties"))) {
      add(
          path.isEmpty() ? field.getKey() : path + "." + field.getKey(),
          file,
          field.getValue(),
          known);
    }
  }

  private static Set<String> words(Map<String, Set<String>> known, String path) {
    return known.computeIfAbsent(path, p -> new LinkedHashSet<>());
  }

  private static Collection<Map.Entry<String, JsonNode>> fields(JsonNode properties) {
    return properties.properties();
  }
}
