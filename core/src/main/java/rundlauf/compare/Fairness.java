package rundlauf.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Format;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.readings.GrowthReadings;
import rundlauf.readings.LoadReadings;
import rundlauf.readings.TrialHead;
import rundlauf.reduce.Reduced;
import rundlauf.reduce.axial.Axial;
import rundlauf.reduce.growth.Growth;
import rundlauf.reduce.runout.Runout;
import rundlauf.reduce.sideload.SideLoad;

/**
 * What must be the same for "better" to be said: pin, station, direction, reference, nut, warmth.
 */
final class Fairness {
  /** Lengths set with a rule: 2 % of a contact at 10 mm is 0.2 mm; our choice. */
  private static final double LENGTH = 0.02;

  /** Nut torque by a wrench of 10 % (common practice, no source). */
  private static final double TORQUE = 0.1;

  /** Warm-up times, of which the last minutes move little; our choice. */
  private static final double WARMTH = 0.25;

  private Fairness() {}

  /** Conditions that matter to one figure of two results of one kind. */
  static List<Condition> of(Reduced a, Reduced b, String figure) {
    List<Condition> all = new ArrayList<>();
    stated(all, a, b, "warm-up", WARMTH);
    if (a instanceof Runout first && b instanceof Runout second) {
      ofRunout(all, first, second, figure);
    }
    if (a instanceof SideLoad first && b instanceof SideLoad second) {
      stated(all, a, b, "nut", TORQUE);
      stated(all, a, b, "pin", 0);
      stated(all, a, b, "rotor", 0);
      ofPush(all, first.readings(), second.readings(), figure);
    }
    if (a instanceof Axial first && b instanceof Axial second) {
      stated(all, a, b, "nut", TORQUE);
      foot(all, first.readings(), second.readings());
    }
    if (a instanceof Growth first && b instanceof Growth second) {
      add(all, "reference", first.readings(), second.readings(), GrowthReadings::reference, 0);
    }
    return all;
  }

  private static void ofRunout(List<Condition> all, Runout a, Runout b, String figure) {
    stated(all, a, b, "nut", TORQUE);
    stated(all, a, b, "pin", 0);
    stated(all, a, b, "turned-by", 0);
    if (figure.startsWith("axis.tip")) {
      add(all, "tip-height", a, b, r -> length(r.axis().tip().distance()), LENGTH);
    }
    if (figure.startsWith("parts") || figure.startsWith("bestClocking")) {
      add(all, "station", a, b, r -> length(NamedFigure.station(r)), LENGTH);
    }
    if (figure.equals(NamedFigure.ASYNCHRONOUS)) {
      add(all, "station", a, b, r -> length(NamedFigure.turned(r)), LENGTH);
    }
    if (figure.startsWith("nextClamping")) {
      add(all, "tip-height", a, b, r -> length(r.nextClamping().at()), LENGTH);
    }
  }

  private static void foot(List<Condition> all, LoadReadings a, LoadReadings b) {
    add(all, "reference", a, b, LoadReadings::reference, 0);
    place(all, a, b);
  }

  private static void place(List<Condition> all, LoadReadings a, LoadReadings b) {
    add(all, "place", a, b, r -> first(r).map(LoadReadings.Point::place), 0);
  }

  private static Optional<String> dialHeight(LoadReadings readings) {
    return first(readings).flatMap(LoadReadings.Point::at).map(Fairness::length);
  }

  /** Joints are carried to the load from wherever they were read; directions know every push. */
  private static void ofPush(List<Condition> all, LoadReadings a, LoadReadings b, String figure) {
    boolean joint = figure.startsWith("shares");
    add(all, "reference", a, b, LoadReadings::reference, 0);
    if (!joint) {
      place(all, a, b);
    }
    add(all, "contact", a, b, r -> r.contact().map(Fairness::length), LENGTH);
    add(all, "shank", a, b, r -> r.body().map(body -> length(body.diameter())), LENGTH);
    if (!joint) {
      add(all, "dial-height", a, b, Fairness::dialHeight, LENGTH);
    }
    if (!figure.startsWith("directions")) {
      add(all, "direction", a, b, r -> first(r).map(p -> axis(p.direction())), 0);
    }
  }

  /** Sayings of what differs. */
  static List<Saying> differing(List<Condition> conditions) {
    return conditions.stream()
        .filter(c -> !c.same())
        .map(
            c ->
                Saying.of(
                    "compare-differs",
                    c.name(),
                    Arg.term(c.name()),
                    stated(c.ofA()),
                    stated(c.ofB())))
        .toList();
  }

  private static Arg stated(Optional<String> condition) {
    return condition.map(Arg::typed).orElseGet(() -> Arg.term("not-stated"));
  }

  /** Sayings of what neither states. */
  static List<Saying> unsaid(List<Condition> conditions) {
    return conditions.stream()
        .filter(Condition::unsaid)
        .map(c -> Saying.of("compare-not-said", c.name(), Arg.term(c.name())))
        .toList();
  }

  private static void stated(
      List<Condition> all, Reduced a, Reduced b, String name, double tolerance) {
    add(all, name, a.head(), b.head(), head -> condition(head, name), tolerance);
  }

  private static Optional<String> condition(TrialHead head, String name) {
    return Optional.ofNullable(head.conditions().get(name));
  }

  private static <T> void add(
      List<Condition> all,
      String name,
      T a,
      T b,
      Function<T, Optional<String>> stated,
      double tolerance) {
    all.add(Condition.of(name, stated.apply(a), stated.apply(b), tolerance));
  }

  private static Optional<LoadReadings.Point> first(LoadReadings readings) {
    return readings.points().stream().filter(p -> p.load() > 0).findFirst();
  }

  private static Optional<String> length(OptionalDouble metres) {
    return metres.isPresent() ? Optional.of(length(metres.getAsDouble())) : Optional.empty();
  }

  private static String length(Quantity quantity) {
    return length(quantity.si());
  }

  private static String length(double metres) {
    return Format.amount(metres, Unit.MILLIMETRE);
  }

  /** To and fro is one axis; to whole degrees. */
  private static String axis(double direction) {
    long degrees = Math.floorMod(Math.round(Unit.DEGREE.fromSi(direction)), 180L);
    return degrees + " deg";
  }
}
