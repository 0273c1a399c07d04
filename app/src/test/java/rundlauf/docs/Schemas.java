package rundlauf.docs;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The schemas of the repository, each under its path within {@code schemas/}. */
public final class Schemas {
  static final Path FOLDER = Pages.ROOT.resolve("schemas");
  private static final String BASE = "rundlauf:/schemas/";
  private static final SchemaRegistry REGISTRY =
      SchemaRegistry.withDefaultDialect(
          SpecificationVersion.DRAFT_2020_12, with -> with.schemas(texts()));

  private Schemas() {}

  static List<Path> files() {
    return Pages.filesUnder(FOLDER, ".json");
  }

  private static Map<String, String> texts() {
    Map<String, String> texts = new LinkedHashMap<>();
    files().forEach(f -> texts.put(BASE + FOLDER.relativize(f), Pages.text(f)));
    return texts;
  }

  /**
   * What a document breaks.
   *
   * @param at such as {@code trial-runout.json} or {@code parts/figure.json#/$defs/figure}
   */
  public static List<String> complaints(String at, JsonNode document) {
    Schema schema = REGISTRY.getSchema(SchemaLocation.of(BASE + at));
    return schema.validate(document).stream()
        .map(e -> e.getInstanceLocation() + ": " + e.getMessage())
        .sorted()
        .toList();
  }

  /** What a schema itself breaks of the draft it names. */
  static List<String> complaintsAboutSchema(JsonNode schema) {
    return REGISTRY
        .getSchema(SchemaLocation.of(SpecificationVersion.DRAFT_2020_12.getDialectId()))
        .validate(schema)
        .stream()
        .map(Object::toString)
        .sorted()
        .toList();
  }
}
