package rundlauf.readings;

import java.util.ArrayList;
import java.util.List;
import rundlauf.bench.Entry;
import rundlauf.bench.Section;
import rundlauf.bench.Section.Bound;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Dimension;
import rundlauf.quantity.Place;
import rundlauf.quantity.QuantityText;
import rundlauf.quantity.Refused;
import rundlauf.quantity.Unit;

/** What was intended in words or in units of the machine's own: directions, settings, bodies. */
final class IntendedWords {
  private IntendedWords() {}

  /** Angles of a push from the side; push and pull along the axis. */
  static List<String> directions(Section s, String kind) {
    List<String> directions = new ArrayList<>();
    for (Entry.Scalar typed : typed(s, "directions")) {
      String text = typed.text().strip();
      if (!kind.equals(TrialKind.AXIAL.word())) {
        Section.quantity(typed, Dimension.ANGLE, Bound.ANY);
      } else if (!AxialReader.DIRECTIONS.contains(text)) {
        throw Refused.at(typed.place(), "axial-direction-unknown", Arg.typed(text));
      }
      directions.add(text);
    }
    return directions;
  }

  /**
   * Numbers, 0 or more, all in per cent, all in volts, or all bare, as the table will hold them.
   */
  static List<String> settings(Section s) {
    List<String> settings = new ArrayList<>();
    String first = "";
    for (Entry.Scalar typed : typed(s, "settings")) {
      String text = typed.text().strip();
      String unit = text.endsWith("%") ? "%" : text.endsWith("V") ? "V" : "";
      refuseNegative(typed, text.substring(0, text.length() - unit.length()));
      if (!settings.isEmpty() && !unit.equals(first)) {
        throw Refused.at(typed.place(), "intended-settings-mixed", Arg.typed(text));
      }
      first = unit;
      settings.add(text);
    }
    return settings;
  }

  /** Bodies with their distances, each told from those before it. */
  static List<TouchedBody> places(Section s) {
    List<TouchedBody> places = new ArrayList<>();
    for (Entry.Scalar typed : typed(s, "places")) {
      TouchedBody touched = TouchedBody.of(typed);
      places.forEach(other -> touched.refuseBeside(other, typed.place()));
      places.add(touched);
    }
    return places;
  }

  private static void refuseNegative(Entry.Scalar typed, String number) {
    Place place = typed.place();
    if (QuantityText.bare(number, Unit.ONE, typed.flow(), place) < 0) {
      throw Refused.at(place, "value-negative", Arg.typed(typed.text()));
    }
  }

  /** A list of texts, or a single text standing for a list of one. */
  private static List<Entry.Scalar> typed(Section s, String name) {
    if (s.entry(name).orElse(null) instanceof Entry.Scalar one) {
      return List.of(one);
    }
    return s.items(name).stream().map(Section::scalar).toList();
  }
}
