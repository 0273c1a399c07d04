package rundlauf.reduce.sideload;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rundlauf.maths.Draws;
import rundlauf.readings.LoadReadings;
import rundlauf.readings.LoadReadings.Point;
import rundlauf.readings.TrialHead;
import rundlauf.reduce.push.LoadFigures;
import rundlauf.reduce.push.LoadFit;
import rundlauf.reduce.push.LoadLines;

/**
 * The lines of all places and directions of a trial that bear one. Each has its own scatter, named
 * by place and number of the direction there, so that neither the order of the places nor the
 * machine's axes change a draw; the force's scale and the plunger's angle are common to all.
 */
final class Slopes {
  private Slopes() {}

  /** In the order first met. */
  static List<Slope> of(LoadReadings readings, Draws draws) {
    List<Slope> all = new ArrayList<>();
    Map<String, Integer> axes = new LinkedHashMap<>();
    List<Point> left = new ArrayList<>(readings.points());
    Optional<Point> next = firstLoaded(left);
    while (next.isPresent()) {
      Point first = next.get();
      LoadLines lines = LoadLines.of(with(readings, facing(first, left), readings.head()));
      String place = name(readings, first);
      int axis = axes.merge(place, 1, Integer::sum);
      slope(readings, first, lines, named(place, axis), draws).ifPresent(all::add);
      left.removeAll(lines.loaded());
      left.remove(first);
      next = firstLoaded(left);
    }
    return all;
  }

  /** Those where the trial has its load come before others. */
  private static Optional<Point> firstLoaded(List<Point> points) {
    Optional<Point> own =
        points.stream().filter(p -> p.load() > 0 && p.contact().isEmpty()).findFirst();
    return own.isPresent() ? own : points.stream().filter(p -> p.load() > 0).findFirst();
  }

  private static List<Point> facing(Point first, List<Point> points) {
    List<Point> facing = new ArrayList<>();
    facing.add(first);
    points.stream()
        .filter(p -> p != first && p.contact().equals(first.contact()))
        .filter(p -> Math.abs(Math.sin(p.dial() - first.dial())) < 1e-9)
        .forEach(facing::add);
    return facing;
  }

  private static Optional<Slope> slope(
      LoadReadings readings, Point first, LoadLines lines, String name, Draws draws) {
    if (lines.loaded().isEmpty() || !LoadLines.independent(lines.design())) {
      return Optional.empty();
    }
    TrialHead head = readings.head();
    var own =
        new TrialHead(
            head.file() + name,
            head.kind(),
            head.title(),
            head.date(),
            head.setup(),
            head.conditions());
    LoadReadings part = with(readings, lines.rows(), own);
    LoadFit fit = LoadFit.of(lines, own.name(), readings.indicator().readTo(), draws);
    var found = new LoadFigures(part, lines, fit, draws).compliance();
    return Optional.of(
        new Slope(
            first.place(), first.at(), first.direction(), first.dial(), first.contact(), found));
  }

  /** The shank where it is pushed is what the stiffness is of: its scatter is the trial's own. */
  private static String name(LoadReadings readings, Point p) {
    double load = readings.contact().map(c -> c.si()).orElse(0.0);
    boolean plain =
        p.place().equals("shank")
            && p.contact().isEmpty()
            && p.at().map(x -> Math.abs(x - load) < 1e-9).orElse(true);
    String at = p.at().map(x -> " " + Math.rint(x * 1e6)).orElse("");
    String under = p.contact().map(x -> " under " + Math.rint(x * 1e6)).orElse("");
    return plain ? "" : " " + p.place() + at + under;
  }

  private static String named(String place, int axis) {
    return axis == 1 ? place : place + " direction " + axis;
  }

  private static LoadReadings with(LoadReadings r, List<Point> points, TrialHead head) {
    return new LoadReadings(
        head,
        r.indicator(),
        r.forceScale(),
        r.contact(),
        r.body(),
        r.reference(),
        r.reaction(),
        r.nose(),
        r.stand(),
        points);
  }
}
