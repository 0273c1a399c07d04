package rundlauf.store;

import java.nio.charset.StandardCharsets;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;

/** Which texts are kept: such as every database gives back as they came. */
final class Texts {
  /** Characters of a document; as many bytes as a YAML file may have. */
  static final int DOCUMENT = 1_000_000;

  /** Characters of a name, a key or a reason. Our choice. */
  static final int NAME = 200;

  /** Characters of a cell; as many as a line of a CSV file may have. */
  static final int CELL = 4_000;

  /** Cells of a reading; as many as a CSV file may have columns. */
  static final int CELLS = 40;

  private Texts() {}

  /** A name, a key or a reason: something must stand in it. */
  static void requireName(String field, String text) {
    if (text.isBlank()) {
      throw Refused.at(Place.NOWHERE.field(field), "text-empty");
    }
    require(field, text, NAME);
  }

  /**
   * @param most characters
   */
  static void require(String field, String text, int most) {
    if (text.length() > most) {
      throw Refused.at(Place.NOWHERE.field(field), "text-too-long", Arg.of(most));
    }
    if (text.indexOf('\0') >= 0 || !StandardCharsets.UTF_8.newEncoder().canEncode(text)) {
      throw Refused.at(Place.NOWHERE.field(field), "text-not-kept");
    }
  }
}
