package rundlauf.guide;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import rundlauf.bench.Entry;
import rundlauf.bench.RowColumns;
import rundlauf.bench.Section;
import rundlauf.bench.Section.Bound;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Dimension;
import rundlauf.quantity.Format;
import rundlauf.quantity.Place;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.readings.AxialReader;
import rundlauf.readings.Intended;

/** A trial that pushes: direction by direction, the load rising and falling again. */
final class PushPlan {
  /** Our choice, because three loads tell bending from play and one does not. */
  private static final List<Integer> COUNTS = List.of(0, 1, 2, 3);

  /** Both ways, because only opposite pushes tell the play. */
  private static final List<String> SIDES = List.of("0 deg", "180 deg");

  /** A load that the plan asks for: a column, the cell's text, and how it is said. */
  private record Load(String column, String text, Arg said, boolean none) {}

  private final Intended intended;
  private final Asked reading;
  private final boolean side;
  private final String reference;
  private final List<Step> steps = new ArrayList<>();

  private PushPlan(Intended intended, TypedRows typed, boolean side, String reference) {
    this.intended = intended;
    this.reading = Readings.asked(intended, typed);
    this.side = side;
    this.reference = reference;
  }

  static Plan side(Intended intended, TypedRows typed, String reference) {
    return new PushPlan(intended, typed, true, reference).plan(typed);
  }

  static Plan axial(Intended intended, TypedRows typed) {
    return new PushPlan(intended, typed, false, "").plan(typed);
  }

  private Plan plan(TypedRows typed) {
    List<String> asked = intended.directions();
    List<String> directions = asked.isEmpty() ? (side ? SIDES : AxialReader.DIRECTIONS) : asked;
    for (int i = 0; i < intended.repeats().orElse(1); i++) {
      directions.forEach(this::loop);
    }
    return new Plan(steps, more(typed));
  }

  private void loop(String direction) {
    List<Load> loads = loads();
    for (int i = 0; i < loads.size(); i++) {
      add(direction, loads.get(i), "up", i == 0 ? rest(direction) : on(loads.get(i)));
    }
    for (int i = loads.size() - 2; i >= 0; i--) {
      add(direction, loads.get(i), "down", off(loads.get(i)));
    }
  }

  private List<Load> loads() {
    if (!intended.loads().isEmpty()) {
      Stream<Double> forces = intended.loads().stream().map(Quantity::si);
      return rising(forces, 0.0).map(PushPlan::force).toList();
    }
    List<Integer> counts = intended.counts().isEmpty() ? COUNTS : intended.counts();
    return rising(counts.stream(), 0)
        .map(n -> new Load("count", Integer.toString(n), Arg.of(n), n == 0))
        .toList();
  }

  /** From nothing up, whichever way they were written down. */
  private static <T extends Comparable<T>> Stream<T> rising(Stream<T> loads, T none) {
    return Stream.concat(Stream.of(none), loads).distinct().sorted();
  }

  private static Load force(double newtons) {
    String text = Format.number(Unit.NEWTON.fromSi(newtons));
    return new Load("load_N", text, Arg.of(newtons, Unit.NEWTON), newtons == 0);
  }

  private Saying rest(String direction) {
    return side
        ? Saying.of("guide-push-rest", "", Arg.number(Unit.DEGREE.fromSi(angle(direction))))
        : Saying.of("guide-axial-rest-" + direction, "");
  }

  private static Saying on(Load load) {
    String code = load.column().equals("count") ? "guide-push-on" : "guide-push-with";
    return Saying.of(code, "", load.said());
  }

  private static Saying off(Load load) {
    if (load.none()) {
      return Saying.of("guide-push-off-all", "");
    }
    String code = load.column().equals("count") ? "guide-push-off" : "guide-push-back-to";
    return Saying.of(code, "", load.said());
  }

  private void add(String direction, Load load, String branch, Saying prompt) {
    List<Given> given = new ArrayList<>();
    given.add(new Given(load.column(), load.text()));
    given.add(
        side ? new Given("direction_deg", degrees(direction)) : new Given("direction", direction));
    if (!side) {
      given.add(new Given("place", "nut"));
    }
    given.add(new Given("branch", branch));
    steps.add(new Step(prompt, given, List.of(reading), scene(direction, load.text())));
  }

  private Scene scene(String direction, String load) {
    return side
        ? new Scene.SideLoad(angle(direction), "shank", load, reference)
        : new Scene.Axial(direction, load);
  }

  private static String degrees(String direction) {
    return Format.number(Unit.DEGREE.fromSi(angle(direction)));
  }

  private static double angle(String direction) {
    var typed = new Entry.Scalar(direction, false, Place.NOWHERE.field("intended.directions"));
    return Section.quantity(typed, Dimension.ANGLE, Bound.ANY).si();
  }

  /** The last row once more. */
  private Step more(TypedRows typed) {
    Map<String, String> last = new LinkedHashMap<>(typed.last().orElse(Map.of()));
    List<Given> given = new ArrayList<>();
    last.forEach(
        (column, text) -> {
          if (!column.startsWith("reading") && !RowColumns.ALL.contains(column)) {
            given.add(new Given(column, text));
          }
        });
    if (given.isEmpty()) {
      given.addAll(steps.get(0).given());
    }
    Scene scene = steps.get(0).scene();
    return new Step(Saying.of("guide-push-more", ""), given, List.of(reading), scene);
  }
}
