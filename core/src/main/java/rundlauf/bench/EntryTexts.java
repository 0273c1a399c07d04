package rundlauf.bench;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Texts of a document by the paths of their fields, such as {@code supply.voltage}. */
public final class EntryTexts {
  /** What ends the path of a list, whose pieces semicolons part. */
  public static final String LIST = "[]";

  private EntryTexts() {}

  /** The text at a path; empty where nothing stands there. */
  public static String at(Entry.Fields document, String path) {
    Optional<Entry> at = Optional.of(document);
    for (String name : path.replace(LIST, "").split("\\.", -1)) {
      at = at.flatMap(e -> e instanceof Entry.Fields f ? f.get(name) : Optional.empty());
    }
    return at.map(EntryTexts::text).orElse("");
  }

  private static String text(Entry entry) {
    if (entry instanceof Entry.Items items) {
      return items.items().stream().map(EntryTexts::text).collect(Collectors.joining("; "));
    }
    return entry instanceof Entry.Scalar scalar ? scalar.text() : "";
  }

  /** Every text that is no part of a list, by its path. */
  public static Map<String, String> all(Entry.Fields document) {
    Map<String, String> texts = new LinkedHashMap<>();
    add("", document, texts);
    return texts;
  }

  private static void add(String above, Entry.Fields fields, Map<String, String> texts) {
    for (Map.Entry<String, Entry> field : fields.fields().entrySet()) {
      if (field.getValue() instanceof Entry.Scalar scalar) {
        texts.put(above + field.getKey(), scalar.text());
      } else if (field.getValue() instanceof Entry.Fields inner) {
        add(above + field.getKey() + ".", inner, texts);
      }
    }
  }
}
