package rundlauf.wire;

import java.util.function.Function;
import rundlauf.quantity.Place;
import rundlauf.quantity.Saying;

/** The JSON line of an input that was refused, or of a fault of ours while it was worked on. */
public final class RefusalDocument {
  private RefusalDocument() {}

  /**
   * The document on one line, without a line end. Line and column are null where there are none;
   * {@code in} names another file (a bench's, a CSV) where the mistake lies in that.
   *
   * @param file the input as the user named it
   * @param saying what was found and what is accepted
   * @param wording the sentence of a saying; the remedy is asked for as {@code CODE.remedy}
   */
  public static String of(
      String file, Saying saying, Place place, Function<Saying, String> wording) {
    return JsonLine.of(
        wording,
        json -> {
          json.text("file", file);
          json.object("error", () -> error(json, file, saying, place));
        });
  }

  /** The fields of an error. */
  static void error(JsonLine json, String file, Saying saying, Place place) {
    json.text("code", saying.code());
    json.why("text", saying);
    json.why("remedy", new Saying(saying.code() + ".remedy", saying.about(), saying.args()));
    if (!place.file().isEmpty() && !place.file().equals(file)) {
      json.text("in", place.file());
    }
    position(json, "line", place.line());
    position(json, "column", place.column());
    json.text("field", place.field());
  }

  private static void position(JsonLine json, String name, int from1) {
    if (from1 > 0) {
      json.count(name, from1);
    } else {
      json.nothing(name);
    }
  }
}
