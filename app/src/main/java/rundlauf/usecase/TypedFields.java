package rundlauf.usecase;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rundlauf.bench.Entry;
import rundlauf.bench.EntryTexts;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;

/**
 * Fields of a form put into a document. A field is named by its path, such as {@code
 * gauge.diameter}; one whose path ends with {@code []} holds a list, its pieces parted by
 * semicolons.
 */
final class TypedFields {
  /** Characters of a text of one line, and of notes; as many as the forms take. Our choice. */
  private static final int LINE = 400;

  private static final int NOTES = 4_000;

  private TypedFields() {}

  /**
   * A document with these fields set; an empty text takes its field away.
   *
   * @param typed by path, in the order in which new ones are added
   * @throws Refused for a text that is longer than a form takes, or of more than one line
   */
  static Entry.Fields into(Entry.Fields document, Map<String, String> typed) {
    Entry.Fields result = document;
    for (Map.Entry<String, String> field : typed.entrySet()) {
      require(field.getKey(), field.getValue());
      List<String> path =
          Arrays.asList(field.getKey().replace(EntryTexts.LIST, "").split("\\.", -1));
      boolean list = field.getKey().endsWith(EntryTexts.LIST);
      result = with(result, path, field.getValue().strip(), list);
    }
    return result;
  }

  private static void require(String path, String text) {
    boolean notes = path.equals("notes") || path.endsWith(".notes");
    int most = notes ? NOTES : LINE;
    Place place = Place.NOWHERE.field(path.replace(EntryTexts.LIST, ""));
    if (text.length() > most) {
      throw Refused.at(place, "text-too-long", Arg.of(most));
    }
    if (!notes && text.strip().chars().anyMatch(Character::isISOControl)) {
      throw Refused.at(place, "text-of-one-line");
    }
  }

  /** Those fields of a form whose text is not what the document holds already. */
  static Map<String, String> changed(Entry.Fields document, Map<String, String> typed) {
    Map<String, String> changed = new LinkedHashMap<>();
    typed.forEach(
        (path, text) -> {
          String now = lines(text);
          if (!now.strip().equals(EntryTexts.at(document, path).strip())) {
            changed.put(path, now);
          }
        });
    return changed;
  }

  /** Browsers end lines their own way. */
  private static String lines(String text) {
    return text.replace("\r\n", "\n");
  }

  /** Those fields of a form in which something stands. */
  static Map<String, String> given(Map<String, String> typed) {
    Map<String, String> given = new LinkedHashMap<>();
    typed.forEach(
        (path, text) -> {
          if (!text.isBlank()) {
            given.put(path, lines(text));
          }
        });
    return given;
  }

  private static Entry.Fields with(
      Entry.Fields fields, List<String> path, String text, boolean list) {
    String first = path.get(0);
    if (path.size() > 1) {
      Entry there = fields.get(first).orElse(null);
      if (text.isEmpty() && !(there instanceof Entry.Fields)) {
        return fields;
      }
      Entry.Fields inner = there instanceof Entry.Fields f ? f : Entry.Fields.none();
      Entry.Fields filled = with(inner, path.subList(1, path.size()), text, list);
      return filled.fields().isEmpty() ? fields.without(first) : fields.with(first, filled);
    }
    if (text.isEmpty()) {
      return fields.without(first);
    }
    return fields.with(first, list ? items(text) : Entry.Scalar.of(text));
  }

  private static Entry.Items items(String text) {
    List<Entry> items =
        Arrays.stream(text.split(";", -1))
            .map(String::strip)
            .filter(piece -> !piece.isEmpty())
            .<Entry>map(Entry.Scalar::of)
            .toList();
    return new Entry.Items(items, Place.NOWHERE);
  }
}
