package rundlauf.bench;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rundlauf.quantity.Place;

/**
 * A document as it was typed: every scalar is still text, every piece knows its place. Files, forms
 * and the store all give this, so one understanding (and one sentence for each mistake) serves them
 * all.
 */
public sealed interface Entry {
  Place place();

  /**
   * A text.
   *
   * @param text as typed, without quotes
   * @param flow whether it stood plain (unquoted) within {@code { }} or {@code [ ]}, where a comma
   *     parts
   * @param place of its first character
   */
  record Scalar(String text, boolean flow, Place place) implements Entry {
    /** A text that stands in no file. */
    public static Scalar of(String text) {
      return new Scalar(text, false, Place.NOWHERE);
    }
  }

  /** A list. */
  record Items(List<Entry> items, Place place) implements Entry {
    public Items {
      items = List.copyOf(items);
    }
  }

  /**
   * Fields by name, in their order.
   *
   * @param fields no name twice
   * @param keyPlaces where each name stands, for a sentence about an unknown one
   */
  record Fields(Map<String, Entry> fields, Map<String, Place> keyPlaces, Place place)
      implements Entry {
    public Fields {
      fields = Collections.unmodifiableMap(new LinkedHashMap<>(fields));
      keyPlaces = Collections.unmodifiableMap(new LinkedHashMap<>(keyPlaces));
    }

    /** A document in which nothing stands. */
    public static Fields none() {
      return new Fields(Map.of(), Map.of(), Place.NOWHERE);
    }

    public Optional<Entry> get(String name) {
      return Optional.ofNullable(fields.get(name));
    }

    /** The same with this under a name, in the place of what stood there or as the last. */
    public Fields with(String name, Entry entry) {
      Map<String, Entry> changed = new LinkedHashMap<>(fields);
      changed.put(name, entry);
      return new Fields(changed, keyPlaces, place);
    }

    /** The same without this name. */
    public Fields without(String name) {
      Map<String, Entry> changed = new LinkedHashMap<>(fields);
      changed.remove(name);
      return new Fields(changed, keyPlaces, place);
    }
  }
}
