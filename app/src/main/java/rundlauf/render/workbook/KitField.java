package rundlauf.render.workbook;

import java.util.ArrayList;
import java.util.List;

/**
 * A field of a part of a bench's equipment.
 *
 * @param path of the field in its part, such as {@code supply.voltage}
 * @param choices the words it may hold; none where anything may be typed
 * @param names the section whose parts it names; empty text where it names none
 * @param needed whether a part must have it
 */
record KitField(String path, List<String> choices, String names, boolean needed) {
  KitField {
    choices = List.copyOf(choices);
  }

  static KitField of(String path, String... choices) {
    return new KitField(path, List.of(choices), "", false);
  }

  static KitField needed(String path) {
    return new KitField(path, List.of(), "", true);
  }

  static KitField naming(String path, String section, boolean needed) {
    return new KitField(path, List.of(), section, needed);
  }

  /** A name, and fields in which anything may be typed, parted by blanks. */
  static List<KitField> named(String paths) {
    List<KitField> fields = new ArrayList<>(List.of(needed("name")));
    for (String path : paths.split(" ", -1)) {
      fields.add(of(path));
    }
    return fields;
  }
}
