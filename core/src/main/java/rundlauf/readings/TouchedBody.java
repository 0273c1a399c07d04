package rundlauf.readings;

import java.util.List;
import java.util.Locale;
import rundlauf.bench.Entry;
import rundlauf.bench.Section;
import rundlauf.bench.Section.Bound;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Dimension;
import rundlauf.quantity.Place;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Refused;
import rundlauf.quantity.Unit;

/**
 * A body that the dial touches, and where.
 *
 * @param body its word
 * @param at its distance from the nut's face [m], behind it negative
 */
public record TouchedBody(String body, double at) {
  /** Bodies from the load to the machine's own. */
  static final List<String> BODIES =
      List.of("shank", "nut", "housing", "mount", "carriage", "table");

  /**
   * As it is typed: {@code nut -1 mm}.
   *
   * @throws Refused for another body, without a distance, and where that body cannot be touched
   */
  static TouchedBody of(Entry.Scalar typed) {
    String[] parts = typed.text().strip().split("\\s+", 2);
    String body = parts[0].toLowerCase(Locale.ROOT);
    if (parts.length < 2 || !BODIES.contains(body)) {
      throw Refused.at(typed.place(), "intended-place", Arg.typed(typed.text()), Arg.list(BODIES));
    }
    var distance = new Entry.Scalar(parts[1], typed.flow(), typed.place());
    Quantity at = Section.quantity(distance, Dimension.LENGTH, Bound.ANY);
    TouchedBody touched = new TouchedBody(body, at.si());
    touched.refuseMisplaced(typed.place());
    return touched;
  }

  /** The nut ends at its face, and the shank begins there. */
  void refuseMisplaced(Place place) {
    if (body.equals("nut") && at > 0) {
      throw Refused.at(place, "nut-ahead-of-face", Arg.of(at, Unit.MILLIMETRE));
    }
    if (body.equals("shank") && at < 0) {
      throw Refused.at(place, "shank-behind-face", Arg.of(-at, Unit.MILLIMETRE));
    }
  }

  /** One distance lies on one body; at the nut's face two of them meet. */
  void refuseBeside(TouchedBody other, Place place) {
    if (at != 0 && at == other.at && !body.equals(other.body)) {
      Arg where = Arg.of(at, Unit.MILLIMETRE);
      throw Refused.at(place, "two-bodies-at", Arg.of(other.body), Arg.of(body), where);
    }
  }
}
