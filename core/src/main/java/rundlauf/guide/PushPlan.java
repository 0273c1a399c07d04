package rundlauf.guide;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
import rundlauf.readings.TouchedBody;

/**
 * A trial that pushes: direction by direction, the load rising and falling again. A side load may
 * be taken at several distances, and with the dial on several bodies.
 */
final class PushPlan {
  /** Both ways, because only opposite pushes tell the play. */
  private static final List<String> SIDES = List.of("0 deg", "180 deg");

  /** Where the load pushes and what the dial touches, as far as either was meant. */
  private record Standing(Optional<Quantity> contact, Optional<TouchedBody> touched) {}

  private final Intended intended;
  private final Asked reading;
  private final boolean side;
  private final String reference;
  private final TypedRows typed;
  private final List<Step> steps = new ArrayList<>();

  private PushPlan(Intended intended, TypedRows typed, boolean side, String reference) {
    this.intended = intended;
    this.reading = Readings.asked(intended, typed);
    this.side = side;
    this.reference = reference;
    this.typed = typed;
  }

  static Plan side(Intended intended, TypedRows typed, String reference) {
    return new PushPlan(intended, typed, true, reference).plan();
  }

  static Plan axial(Intended intended, TypedRows typed) {
    return new PushPlan(intended, typed, false, "").plan();
  }

  private Plan plan() {
    List<String> asked = intended.directions();
    List<String> directions = asked.isEmpty() ? (side ? SIDES : AxialReader.DIRECTIONS) : asked;
    for (Standing standing : standings()) {
      for (int i = 0; i < intended.repeats().orElse(1); i++) {
        for (String direction : directions) {
          boolean moved = i == 0 && direction.equals(directions.get(0));
          loop(standing, direction, moved);
        }
      }
    }
    return new Plan(steps, more());
  }

  /** The dial goes from body to body at one load before that is moved. */
  private List<Standing> standings() {
    List<Standing> all = new ArrayList<>();
    for (Optional<Quantity> contact : eachOrNone(intended.contacts())) {
      for (Optional<TouchedBody> touched : eachOrNone(intended.places())) {
        all.add(new Standing(contact, touched));
      }
    }
    return side ? all : List.of(new Standing(Optional.empty(), Optional.empty()));
  }

  private static <T> List<Optional<T>> eachOrNone(List<T> meant) {
    return meant.isEmpty() ? List.of(Optional.empty()) : meant.stream().map(Optional::of).toList();
  }

  private void loop(Standing standing, String direction, boolean moved) {
    List<PushLoad> loads = PushLoad.rising(intended);
    for (int i = 0; i < loads.size(); i++) {
      Saying prompt = i == 0 ? rest(standing, direction, moved) : loads.get(i).on();
      add(standing, direction, loads.get(i), "up", prompt);
    }
    for (int i = loads.size() - 2; i >= 0; i--) {
      add(standing, direction, loads.get(i), "down", loads.get(i).off());
    }
  }

  private Saying rest(Standing standing, String direction, boolean moved) {
    if (!side) {
      return Saying.of("guide-axial-rest-" + direction, "");
    }
    Arg along = Arg.number(Unit.DEGREE.fromSi(angle(direction)));
    String code = "guide-push-rest" + (moved ? suffix(standing) : "");
    List<Arg> args = new ArrayList<>(List.of(along));
    if (moved) {
      standing.touched().ifPresent(t -> args.addAll(said(t)));
      standing.contact().ifPresent(at -> args.add(Arg.of(at.si(), Unit.MILLIMETRE)));
    }
    return Saying.of(code, "", args.toArray(Arg[]::new));
  }

  private static String suffix(Standing standing) {
    return (standing.touched().isPresent() ? "-dial" : "")
        + (standing.contact().isPresent() ? "-load" : "");
  }

  private static List<Arg> said(TouchedBody touched) {
    Arg side = Arg.term(touched.at() < 0 ? "behind" : "in-front");
    return List.of(Arg.of(touched.body()), Arg.of(Math.abs(touched.at()), Unit.MILLIMETRE), side);
  }

  private void add(
      Standing standing, String direction, PushLoad load, String branch, Saying prompt) {
    List<Given> given = new ArrayList<>();
    standing.contact().ifPresent(at -> given.add(typed.length("contact", at.si())));
    standing.touched().ifPresent(t -> given.add(typed.length("at", t.at())));
    standing.touched().ifPresent(t -> given.add(new Given("place", t.body())));
    given.add(new Given(load.column(), load.text()));
    given.add(
        side ? new Given("direction_deg", degrees(direction)) : new Given("direction", direction));
    if (!side) {
      given.add(new Given("place", "nut"));
    }
    given.add(new Given("branch", branch));
    Scene scene = scene(standing, direction, load.text());
    steps.add(new Step(prompt, given, List.of(reading), scene));
  }

  private Scene scene(Standing standing, String direction, String load) {
    String body = standing.touched().map(TouchedBody::body).orElse("shank");
    return side
        ? new Scene.SideLoad(angle(direction), body, load, reference)
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
  private Step more() {
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
    // Drawn as the step that asked for that row, if one did.
    Scene scene =
        steps.stream()
            .filter(step -> Plan.answers(step, last))
            .map(Step::scene)
            .findFirst()
            .orElse(steps.get(0).scene());
    return new Step(Saying.of("guide-push-more", ""), given, List.of(reading), scene);
  }
}
