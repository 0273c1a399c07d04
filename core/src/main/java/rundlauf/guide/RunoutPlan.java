package rundlauf.guide;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Format;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.readings.Intended;

/**
 * A runout trial: clamping by clamping, station by station, round the turn and back to its start.
 */
final class RunoutPlan {
  /** Our choice, because eight tell a three-lobed pin from runout and four do not. */
  private static final int POSITIONS = 8;

  private static final String ANGLE = "angle_deg";
  private static final String CLAMPING = "clamping";
  private static final String COLLET = "collet_deg";
  private static final String SHANK = "shank_deg";
  private static final String STATION = "station";

  private final Intended intended;
  private final Asked reading;
  private final TypedRows typed;
  private final int positions;
  private final int turns;
  private final int clampings;

  /** Where the last row was read, as far as its table says it. */
  private final List<Given> where;

  private final List<Step> steps = new ArrayList<>();

  private RunoutPlan(Intended intended, TypedRows typed) {
    this.intended = intended;
    this.reading = Readings.asked(intended, typed);
    this.typed = typed;
    this.positions = intended.positions().orElse(POSITIONS);
    this.turns = intended.turns().orElse(1);
    this.clampings =
        Math.max(
            intended.clampings().orElse(1),
            Math.max(intended.collet().size(), intended.shank().size()));
    Map<String, String> last = typed.last().orElse(Map.of());
    this.where =
        Stream.of(CLAMPING, COLLET, SHANK, typed.column(STATION).orElse(STATION))
            .filter(last::containsKey)
            .map(column -> new Given(column, last.getOrDefault(column, "")))
            .toList();
  }

  static Plan of(Intended intended, TypedRows typed) {
    RunoutPlan plan = new RunoutPlan(intended, typed);
    for (int clamping = 1; clamping <= plan.clampings; clamping++) {
      plan.clamping(clamping);
    }
    return new Plan(plan.steps, plan.more(typed));
  }

  private void clamping(int clamping) {
    if (intended.stations().isEmpty()) {
      sweep(clamping, Optional.empty(), true);
    }
    for (int i = 0; i < intended.stations().size(); i++) {
      sweep(clamping, Optional.of(intended.stations().get(i)), i == 0);
    }
  }

  private void sweep(int clamping, Optional<Quantity> at, boolean first) {
    int last = positions * turns;
    for (int i = 0; i <= last; i++) {
      double angle = 2 * Math.PI * i / positions;
      Saying prompt = i == 0 ? begin(clamping, at, first) : i == last ? back() : turnTo(i);
      steps.add(step(prompt, clamping, at, angle));
    }
  }

  private Saying begin(int clamping, Optional<Quantity> at, boolean first) {
    if (first && clamping > 1) {
      return clampAnew(clamping);
    }
    if (!first) {
      return Saying.of("guide-runout-move", "", where(at));
    }
    String code = "guide-runout-begin" + (at.isPresent() ? "-at" : "");
    return isClocked(clamping)
        ? Saying.of(code + "-turned", "", where(at), collet(clamping), shank(clamping))
        : Saying.of(code, "", where(at));
  }

  private static Arg where(Optional<Quantity> at) {
    return Arg.of(at.map(Quantity::si).orElse(0.0), Unit.MILLIMETRE);
  }

  private Saying clampAnew(int clamping) {
    Arg number = Arg.of(clamping);
    return isClocked(clamping)
        ? Saying.of("guide-runout-clamp-turned", "", number, collet(clamping), shank(clamping))
        : Saying.of("guide-runout-clamp", "", number);
  }

  private boolean isClocked(int clamping) {
    return clamping <= Math.max(intended.collet().size(), intended.shank().size());
  }

  private Arg collet(int clamping) {
    return angle(of(intended.collet(), clamping));
  }

  private Arg shank(int clamping) {
    return angle(of(intended.shank(), clamping));
  }

  private static Arg angle(Optional<Quantity> clock) {
    return Arg.number(Unit.DEGREE.fromSi(clock.map(Quantity::si).orElse(0.0)));
  }

  private static Optional<Quantity> of(List<Quantity> clocks, int clamping) {
    return clamping <= clocks.size() ? Optional.of(clocks.get(clamping - 1)) : Optional.empty();
  }

  /** As the mark shows it: from the second turn on the turn is said beside it. */
  private Saying turnTo(int position) {
    double degrees = 360.0 * (position % positions) / positions;
    return position < positions
        ? turnTo(degrees)
        : Saying.of(
            "guide-runout-turn-on", "", Arg.number(degrees), Arg.of(position / positions + 1));
  }

  private static Saying turnTo(double degrees) {
    return Saying.of("guide-runout-turn", "", Arg.number(degrees));
  }

  private Saying back() {
    return turns == 1
        ? Saying.of("guide-runout-back", "")
        : Saying.of("guide-runout-back-last", "", Arg.of(turns));
  }

  private Step step(Saying prompt, int clamping, Optional<Quantity> at, double angle) {
    List<Given> given = new ArrayList<>();
    if (clampings > 1) {
      given.add(new Given(CLAMPING, Integer.toString(clamping)));
    }
    of(intended.collet(), clamping).ifPresent(c -> given.add(degrees(COLLET, c.si())));
    of(intended.shank(), clamping).ifPresent(c -> given.add(degrees(SHANK, c.si())));
    at.ifPresent(s -> given.add(typed.length(STATION, s.si())));
    where.stream().filter(w -> given.stream().noneMatch(w::isAlike)).forEach(given::add);
    given.add(degrees(ANGLE, angle));
    OptionalDouble height =
        at.isPresent() ? OptionalDouble.of(at.get().si()) : OptionalDouble.empty();
    return new Step(prompt, given, List.of(reading), new Scene.Runout(angle, height));
  }

  private static Given degrees(String column, double angle) {
    return new Given(column, Format.number(Unit.DEGREE.fromSi(angle)));
  }

  /** On from the last row by one position more. */
  private Step more(TypedRows typed) {
    if (typed.rows().isEmpty()) {
      return steps.get(0);
    }
    if (typed.column("swing").isPresent()) {
      return swing(typed.column("swing").get());
    }
    Map<String, String> last = typed.last().orElse(Map.of());
    double at = TypedRows.number(last.getOrDefault(ANGLE, "")).map(Number::doubleValue).orElse(0.0);
    double next = (at + 360.0 / positions) % 360;
    List<Given> given = new ArrayList<>(where);
    given.add(new Given(ANGLE, Format.number(next)));
    double angle = Unit.DEGREE.toSi(next);
    Scene scene = new Scene.Runout(angle, OptionalDouble.empty());
    return new Step(turnTo(next), given, List.of(reading), scene);
  }

  /** A trial of swings goes on with swings: it may not have readings beside them. */
  private Step swing(String column) {
    var asked = new Asked(column, Asked.Kind.NUMBER, List.of(), true);
    Scene scene = new Scene.Runout(0, OptionalDouble.empty());
    return new Step(Saying.of("guide-runout-swing", ""), where, List.of(asked), scene);
  }
}
