package rundlauf.files;

import java.util.Map;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import rundlauf.bench.Entry;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;

/**
 * A YAML 1.2 document as typed: every scalar a text, every piece with its place.
 *
 * @param fields the whole document
 * @param blocks the block texts ({@code |} and {@code >}) by their place
 */
record YamlDocument(Entry.Fields fields, Map<Place, ScalarStyle> blocks) {

  /** Reads a document; refuses whatever lets one text mean two things. */
  static YamlDocument read(String text, String file) {
    return new YamlReader(text, file).document();
  }

  /** Refuses it when it has this field: then it is about something else than was asked for. */
  void refuse(String field, String code) {
    if (fields.get(field).isPresent()) {
      Place place = fields.keyPlaces().getOrDefault(field, fields.place());
      throw Refused.at(place.field(field), code);
    }
  }
}
