package rundlauf.usecase;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import rundlauf.bench.Entry;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Saying;

/** What an edition of a bench's document says otherwise than the one before it. */
final class EditionChanges {
  private EditionChanges() {}

  /**
   * A saying for each part that is new, another or gone, and for each field of the bench itself.
   */
  static List<Saying> of(Entry.Fields before, Entry.Fields now) {
    Set<String> names = new LinkedHashSet<>(before.fields().keySet());
    names.addAll(now.fields().keySet());
    List<Saying> changes = new ArrayList<>();
    for (String name : names) {
      if (isSection(before, name) || isSection(now, name)) {
        changes.addAll(parts(name, byName(before, name), byName(now, name)));
      } else if (!text(before.fields().get(name)).equals(text(now.fields().get(name)))) {
        changes.add(Saying.of("edition-head", "", Arg.of(name)));
      }
    }
    return List.copyOf(changes);
  }

  private static boolean isSection(Entry.Fields document, String name) {
    return document.fields().get(name) instanceof Entry.Items;
  }

  private static Map<String, Entry.Fields> byName(Entry.Fields document, String section) {
    Map<String, Entry.Fields> parts = new LinkedHashMap<>();
    for (Entry part : BenchDocument.parts(document, section)) {
      if (part instanceof Entry.Fields fields) {
        parts.put(PartUses.name(fields), fields);
      }
    }
    return parts;
  }

  private static List<Saying> parts(
      String section, Map<String, Entry.Fields> before, Map<String, Entry.Fields> now) {
    List<Saying> changes = new ArrayList<>();
    for (Map.Entry<String, Entry.Fields> part : now.entrySet()) {
      Arg name = Arg.typed(part.getKey());
      Entry.Fields was = before.get(part.getKey());
      if (was == null) {
        changes.add(Saying.of("edition-new", section, name));
      } else if (!otherFields(was, part.getValue()).isEmpty()) {
        Arg fields = Arg.list(otherFields(was, part.getValue()));
        changes.add(Saying.of("edition-other", section, name, fields));
      }
    }
    before.keySet().stream()
        .filter(name -> !now.containsKey(name))
        .forEach(name -> changes.add(Saying.of("edition-gone", section, Arg.typed(name))));
    return changes;
  }

  private static List<String> otherFields(Entry.Fields was, Entry.Fields now) {
    Set<String> names = new LinkedHashSet<>(was.fields().keySet());
    names.addAll(now.fields().keySet());
    return names.stream()
        .filter(name -> !text(was.fields().get(name)).equals(text(now.fields().get(name))))
        .toList();
  }

  /** What an entry says, wherever it stands. */
  private static Object text(@Nullable Entry entry) {
    if (entry instanceof Entry.Items items) {
      return items.items().stream().map(EditionChanges::text).toList();
    }
    if (entry instanceof Entry.Fields fields) {
      Map<String, Object> texts = new LinkedHashMap<>();
      fields.fields().forEach((name, field) -> texts.put(name, text(field)));
      return texts;
    }
    return entry instanceof Entry.Scalar scalar ? scalar.text() : "";
  }
}
