package rundlauf.wire;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * {@code datapackage.json}: what lies in a package, by Frictionless Data Package, Data Resource and
 * Table Schema, version 1 (specs.frictionlessdata.io).
 */
public final class DescriptorDocument {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
  private static final Map<String, String> MEDIA = media();
  private static final List<String> TEXTS = List.of("yaml", "csv", "json");

  private DescriptorDocument() {}

  /**
   * A file of the package.
   *
   * @param hash {@code sha256:} and its digest
   * @param delimiter what parts the cells of a table; empty text for what is no table
   */
  public record Resource(
      String path, long bytes, String hash, String delimiter, List<Field> fields) {
    public Resource {
      fields = List.copyOf(fields);
    }
  }

  /** A column of a table, its type by Table Schema. */
  public record Field(
      String name, String type, String unit, boolean decimalComma, String description) {}

  private static Map<String, String> media() {
    Map<String, String> media = new LinkedHashMap<>();
    media.put("yaml", "application/yaml");
    media.put("csv", "text/csv");
    media.put("json", "application/json");
    media.put("wav", "audio/wav");
    media.put("jpg", "image/jpeg");
    media.put("jpeg", "image/jpeg");
    media.put("png", "image/png");
    return media;
  }

  /** The document, always the same text for the same files. */
  public static String of(String title, List<Resource> resources) {
    ObjectNode document = NODES.objectNode();
    document.put("profile", "data-package");
    document.put("name", name(title, List.of()));
    document.put("title", title);
    ArrayNode all = document.putArray("resources");
    List<String> names = new ArrayList<>();
    for (Resource resource : resources) {
      String name = name(resource.path(), names);
      names.add(name);
      all.add(node(name, resource));
    }
    DefaultIndenter lines = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter printer =
        new DefaultPrettyPrinter().withObjectIndenter(lines).withArrayIndenter(lines);
    try {
      return JSON.writer(printer).writeValueAsString(document) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a descriptor that cannot be written", e);
    }
  }

  private static ObjectNode node(String name, Resource resource) {
    boolean table = !resource.fields().isEmpty();
    String format = resource.path().substring(resource.path().lastIndexOf('.') + 1);
    ObjectNode node = NODES.objectNode();
    node.put("profile", table ? "tabular-data-resource" : "data-resource");
    node.put("name", name);
    node.put("path", resource.path());
    node.put("format", format);
    node.put("mediatype", MEDIA.getOrDefault(format, "application/octet-stream"));
    if (TEXTS.contains(format)) {
      node.put("encoding", "utf-8");
    }
    node.put("bytes", resource.bytes());
    node.put("hash", resource.hash());
    if (table) {
      ObjectNode dialect = node.putObject("dialect");
      dialect.put("delimiter", resource.delimiter());
      dialect.put("doubleQuote", true);
      dialect.put("skipInitialSpace", true);
      dialect.put("commentChar", "#");
      ArrayNode fields = node.putObject("schema").putArray("fields");
      resource.fields().forEach(field -> fields.add(field(field)));
    }
    return node;
  }

  private static ObjectNode field(Field field) {
    ObjectNode node = NODES.objectNode();
    node.put("name", field.name());
    node.put("type", field.type());
    if (field.decimalComma()) {
      node.put("decimalChar", ",");
    }
    if (!field.unit().isEmpty()) {
      node.put("unit", field.unit());
    }
    node.put("description", field.description());
    return node;
  }

  /** Lower-case letters, digits and {@code . _ - /} alone, as the specification asks. */
  private static String name(String text, List<String> taken) {
    String plain =
        text.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9._/-]+", "-").replaceAll("^-|-$", "");
    String name = plain.isEmpty() ? "bench" : plain;
    for (int i = 2; taken.contains(name); i++) {
      name = plain + "-" + i;
    }
    return name;
  }

  /**
   * Path, size and digest of every file that a document names.
   *
   * @param name of the document, for sentences
   * @throws rundlauf.quantity.Refused when it is not such a document
   */
  public static List<Resource> read(String text, String name) {
    List<Resource> resources = new ArrayList<>();
    for (JsonNode one : FiguresDocument.parse(text, name).path("resources")) {
      resources.add(
          new Resource(
              one.path("path").asText(),
              one.path("bytes").asLong(-1),
              one.path("hash").asText(),
              "",
              List.of()));
    }
    return resources;
  }
}
