package rundlauf.usecase;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import rundlauf.bench.Entry;
import rundlauf.quantity.Place;

/**
 * Fields of a form put into a document. A field is named by its path, such as {@code
 * gauge.diameter}; one whose path ends with {@code []} holds a list, its pieces parted by
 * semicolons.
 */
final class TypedFields {
  private static final String LIST = "[]";

  private TypedFields() {}

  /**
   * A document with these fields set; an empty text takes its field away.
   *
   * @param typed by path, in the order in which new ones are added
   */
  static Entry.Fields into(Entry.Fields document, Map<String, String> typed) {
    Entry.Fields result = document;
    for (Map.Entry<String, String> field : typed.entrySet()) {
      List<String> path = Arrays.asList(field.getKey().replace(LIST, "").split("\\.", -1));
      boolean list = field.getKey().endsWith(LIST);
      result = with(result, path, field.getValue().strip(), list);
    }
    return result;
  }

  /** Those fields of a form whose text is not what the document holds already. */
  static Map<String, String> changed(Entry.Fields document, Map<String, String> typed) {
    Map<String, String> changed = new LinkedHashMap<>();
    typed.forEach(
        (path, text) -> {
          String now = lines(text);
          if (!now.strip().equals(text(document, path).strip())) {
            changed.put(path, now);
          }
        });
    return changed;
  }

  /** Browsers end lines their own way. */
  private static String lines(String text) {
    return text.replace("\r\n", "\n");
  }

  private static String text(Entry.Fields document, String path) {
    @Nullable Entry at = document;
    for (String name : path.split("\\.", -1)) {
      at = at instanceof Entry.Fields fields ? fields.get(name).orElse(null) : null;
    }
    return at instanceof Entry.Scalar scalar ? scalar.text() : "";
  }

  /** A document in which nothing stands. */
  static Entry.Fields none() {
    return new Entry.Fields(new LinkedHashMap<>(), new LinkedHashMap<>(), Place.NOWHERE);
  }

  private static Entry.Fields with(
      Entry.Fields fields, List<String> path, String text, boolean list) {
    Map<String, Entry> changed = new LinkedHashMap<>(fields.fields());
    String first = path.get(0);
    if (path.size() > 1) {
      Entry there = changed.get(first);
      Entry.Fields inner = there instanceof Entry.Fields f ? f : none();
      Entry.Fields filled = with(inner, path.subList(1, path.size()), text, list);
      put(changed, first, filled, filled.fields().isEmpty());
    } else {
      put(changed, first, list ? items(text) : scalar(text), text.isEmpty());
    }
    return new Entry.Fields(changed, fields.keyPlaces(), fields.place());
  }

  private static void put(Map<String, Entry> fields, String name, Entry value, boolean empty) {
    if (empty) {
      fields.remove(name);
    } else {
      fields.put(name, value);
    }
  }

  private static Entry.Items items(String text) {
    List<Entry> items =
        Arrays.stream(text.split(";", -1))
            .map(String::strip)
            .filter(piece -> !piece.isEmpty())
            .<Entry>map(TypedFields::scalar)
            .toList();
    return new Entry.Items(items, Place.NOWHERE);
  }

  private static Entry.Scalar scalar(String text) {
    return new Entry.Scalar(text, false, Place.NOWHERE);
  }
}
