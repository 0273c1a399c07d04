package rundlauf.wire;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.BiConsumer;

/** Writes what stands under paths such as {@code force.mean.x} as objects within objects. */
final class Nested {
  private Nested() {}

  /**
   * Writes all paths, those with a common beginning together.
   *
   * @param leaf writes one: its last name and its path
   */
  static <T> void write(JsonLine json, Map<String, T> byPath, BiConsumer<String, String> leaf) {
    write(json, "", byPath, leaf);
  }

  private static <T> void write(
      JsonLine json, String above, Map<String, T> byPath, BiConsumer<String, String> leaf) {
    Map<String, Map<String, T>> groups = new LinkedHashMap<>();
    byPath.forEach(
        (path, value) -> {
          int dot = path.indexOf('.');
          String first = dot < 0 ? path : path.substring(0, dot);
          String rest = dot < 0 ? "" : path.substring(dot + 1);
          groups.computeIfAbsent(first, k -> new LinkedHashMap<>()).put(rest, value);
        });
    groups.forEach(
        (name, inner) -> {
          if (inner.containsKey("")) {
            leaf.accept(name, above + name);
          } else {
            json.object(name, () -> write(json, above + name + ".", inner, leaf));
          }
        });
  }
}
