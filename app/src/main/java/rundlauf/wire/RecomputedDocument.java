package rundlauf.wire;

import java.util.List;
import java.util.function.Function;
import rundlauf.quantity.Saying;

/** The JSON document of a package that was recomputed. */
public final class RecomputedDocument {
  private RecomputedDocument() {}

  /**
   * The document on one line, without a line end.
   *
   * @param file the package as the user named it
   * @param figures how many were compared
   * @param wording the sentence of a saying
   */
  public static String of(
      String file, int figures, List<Saying> differs, Function<Saying, String> wording) {
    return JsonLine.of(
        wording,
        json -> {
          json.text("file", file);
          json.count("figures", figures);
          json.sayings("differs", differs);
        });
  }
}
