package rundlauf.readings;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import rundlauf.bench.Entry;
import rundlauf.bench.Section;
import rundlauf.bench.Section.Bound;
import rundlauf.bench.Trial;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Dimension;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Refused;

/**
 * What a trial was meant to be when it was begun. It guides whoever takes it; no figure depends on
 * it.
 *
 * @param reading the unit that readings are typed in: {@code div um mm thou}
 * @param positions round the turn
 * @param turns read on, one after the other
 * @param stations where the dial touches, from the nut's face
 * @param clampings how often the tool is clamped anew
 * @param collet its clock angle in each clamping; none where it stays as it is
 * @param shank likewise
 * @param counts of masses hung on, rising
 * @param loads in place of counts
 * @param contacts where the load pushes, one after the other, from the nut's face
 * @param places that the dial touches, one after the other
 * @param directions of the push: angles of a side load, {@code push} and {@code pull} of an axial
 * @param repeats how often all of it is taken
 * @param settings of the speed, as the control shows them
 * @param span how long readings go on
 * @param every the time between two of them
 */
public record Intended(
    Optional<String> reading,
    Optional<Integer> positions,
    Optional<Integer> turns,
    List<Quantity> stations,
    Optional<Integer> clampings,
    List<Quantity> collet,
    List<Quantity> shank,
    List<Integer> counts,
    List<Quantity> loads,
    List<Quantity> contacts,
    List<TouchedBody> places,
    List<String> directions,
    Optional<Integer> repeats,
    List<String> settings,
    Optional<Quantity> span,
    Optional<Quantity> every) {
  static final String FIELD = "intended";

  /** The most steps of one kind; more is a slip of the finger. Our choice. */
  private static final int MOST = 400;

  public Intended {
    stations = List.copyOf(stations);
    collet = List.copyOf(collet);
    shank = List.copyOf(shank);
    counts = List.copyOf(counts);
    loads = List.copyOf(loads);
    contacts = List.copyOf(contacts);
    places = List.copyOf(places);
    directions = List.copyOf(directions);
    settings = List.copyOf(settings);
  }

  /**
   * What a trial's document says of it; where it says nothing, nothing is meant.
   *
   * @throws Refused for whatever is not as it should be in it
   */
  public static Intended of(Trial trial) {
    Entry typed = trial.document().get(FIELD).orElse(nothing(trial));
    return read(section(typed), trial.kind().strip());
  }

  private static Entry nothing(Trial trial) {
    return new Entry.Fields(
        new LinkedHashMap<>(), new LinkedHashMap<>(), trial.document().place().field(FIELD));
  }

  /** Refuses what cannot be meant. */
  static void check(Section trial) {
    String kind = trial.text("trial").orElse("");
    trial.entry(FIELD).ifPresent(entry -> read(section(entry), kind));
  }

  private static Section section(Entry entry) {
    return Section.of(
        entry,
        "reading",
        "positions",
        "turns",
        "stations",
        "clampings",
        "collet",
        "shank",
        "counts",
        "loads",
        "contacts",
        "places",
        "directions",
        "repeats",
        "settings",
        "for",
        "every");
  }

  private static Intended read(Section s, String kind) {
    refuseManyReadings(s);
    return new Intended(
        s.word("reading", "div", "um", "mm", "thou"),
        count(s, "positions", 4),
        count(s, "turns", 1),
        quantities(s, "stations", Dimension.LENGTH, Bound.ANY),
        count(s, "clampings", 1),
        quantities(s, "collet", Dimension.ANGLE, Bound.ANY),
        quantities(s, "shank", Dimension.ANGLE, Bound.ANY),
        counts(s),
        quantities(s, "loads", Dimension.FORCE, Bound.NOT_NEGATIVE),
        quantities(s, "contacts", Dimension.LENGTH, Bound.NOT_NEGATIVE),
        IntendedWords.places(s),
        IntendedWords.directions(s, kind),
        count(s, "repeats", 1),
        IntendedWords.settings(s),
        s.quantity("for", Dimension.TIME, Bound.POSITIVE),
        s.quantity("every", Dimension.TIME, Bound.POSITIVE));
  }

  /** Turns may be many where positions are few. */
  private static void refuseManyReadings(Section s) {
    int positions = count(s, "positions", 4).orElse(4);
    int turns = count(s, "turns", 1).orElse(1);
    if (positions * turns > MOST) {
      throw Refused.at(
          s.place("turns"), "intended-many-turns", Arg.of(turns), Arg.of(positions), Arg.of(MOST));
    }
  }

  private static Optional<Integer> count(Section s, String name, int least) {
    return s.entry(name).map(entry -> count(entry, least));
  }

  private static int count(Entry entry, int least) {
    Entry.Scalar typed = Section.scalar(entry);
    int count = Section.count(typed, least);
    if (count > MOST) {
      throw Refused.at(typed.place(), "intended-many", Arg.typed(typed.text()), Arg.of(MOST));
    }
    return count;
  }

  private static List<Integer> counts(Section s) {
    return s.items("counts").stream().map(entry -> count(entry, 0)).toList();
  }

  private static List<Quantity> quantities(
      Section s, String name, Dimension dimension, Bound bound) {
    return s.items(name).stream()
        .map(entry -> Section.quantity(Section.scalar(entry), dimension, bound))
        .toList();
  }
}
