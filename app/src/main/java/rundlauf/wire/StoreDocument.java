package rundlauf.wire;

import java.util.List;
import java.util.Map;

/** The JSON documents of what went into a store and out of it, each on one line. */
public final class StoreDocument {
  private StoreDocument() {}

  /**
   * Of a copy of a store.
   *
   * @param file where the copy was to go, as the user named it
   * @param store its address, without secrets
   * @param copy where the copy lies
   */
  public static String copied(String file, String store, String copy, long bytes) {
    return JsonLine.of(
        saying -> saying.code(),
        json -> {
          json.text("file", file);
          json.text("store", store);
          json.text("copy", copy);
          json.count("bytes", bytes);
        });
  }

  /**
   * Of a package that was written out of a store.
   *
   * @param file the folder, as the user named it
   * @param files of the package
   */
  public static String exported(String file, String bench, List<String> files) {
    return JsonLine.of(
        saying -> saying.code(),
        json -> {
          json.text("file", file);
          json.text("bench", bench);
          json.texts("package", files);
        });
  }

  /**
   * Of a package that was taken into a store.
   *
   * @param file the package, as the user named it
   * @param fresh how many of each kind the store had not kept before
   */
  public static String imported(String file, String bench, Map<String, Integer> fresh) {
    return JsonLine.of(
        saying -> saying.code(),
        json -> {
          json.text("file", file);
          json.text("bench", bench);
          json.object("new", () -> fresh.forEach(json::count));
        });
  }
}
