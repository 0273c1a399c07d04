package rundlauf.reduce.push;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import rundlauf.maths.LeastSquares;
import rundlauf.maths.Samples;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;
import rundlauf.readings.LoadReadings;
import rundlauf.readings.LoadReadings.Branch;
import rundlauf.readings.LoadReadings.Point;

/**
 * The rows that make one line: one place, pushed to and fro along one axis. A reading is modelled
 * as {@code offset of its zeroing + compliance · F · c + sign · play/2 ± loop/2}, with c the cosine
 * between push and dial and sign that of c.
 *
 * @param loaded rows under load, in the order taken
 * @param unloaded rows without, of the same place and dial
 * @param zeroings settings of the dial among them, each with its own offset
 * @param secant no two loads differ on one side, so the line passes through the unloaded readings
 * @param play opposite pushes share a setting of the dial, so their intercepts tell the play
 * @param loop rising and falling loads are both there, so their shift can be told
 * @param otherPlaces rows left out for their place
 * @param otherDirections rows left out for their direction
 */
public record LoadLines(
    List<Point> loaded,
    List<Point> unloaded,
    List<Integer> zeroings,
    boolean secant,
    boolean play,
    boolean loop,
    int otherPlaces,
    int otherDirections) {

  /** Pushes within 5° of one axis are along it; our choice, the cosine then is over 0.996. */
  private static final double ALONG = Math.cos(Math.toRadians(5));

  /** A dial at more than 60° to the push shows less than half of it; our choice. */
  private static final double FACING = 0.5;

  /** Rows along the axis of the first loaded row, at its place. */
  public static LoadLines of(LoadReadings readings) {
    Point first = first(readings);
    Predicate<Point> there =
        p ->
            p.place().equals(first.place())
                && p.at().equals(first.at())
                && p.contact().equals(first.contact());
    Predicate<Point> loaded = p -> p.load() > 0;
    Predicate<Point> along =
        p -> alongside(p.direction(), first.direction()) && Math.abs(cosine(p)) >= FACING;
    List<Point> used = those(readings, there.and(loaded).and(along));
    Set<Integer> zeroings = new LinkedHashSet<>();
    used.forEach(p -> zeroings.add(p.zeroed()));
    List<Point> rest =
        those(readings, there.and(loaded.negate()).and(p -> zeroings.contains(p.zeroed())));
    int elsewhere = those(readings, there.negate()).size();
    int across = those(readings, there.and(loaded).and(along.negate())).size();
    return shaped(used, rest, List.copyOf(zeroings), elsewhere, across);
  }

  /**
   * The same of readings that can bear a line.
   *
   * @throws Refused {@code side-load-no-load} or {@code side-load-one-load} when they cannot
   */
  public static LoadLines usable(LoadReadings readings) {
    Place file = new Place(readings.head().file(), 0, 0, "readings");
    if (readings.points().stream().noneMatch(p -> p.load() > 0)) {
      throw Refused.at(file, "side-load-no-load");
    }
    LoadLines lines = of(readings);
    if (lines.loaded().isEmpty() || !independent(lines.design())) {
      throw Refused.at(file, "side-load-one-load");
    }
    return lines;
  }

  /** The first under load, where the trial has its load if there is one. */
  private static Point first(LoadReadings readings) {
    List<Point> loaded = those(readings, p -> p.load() > 0);
    return loaded.stream()
        .filter(p -> p.contact().isEmpty())
        .findFirst()
        .orElseGet(() -> loaded.get(0));
  }

  /** Whether two directions [rad] are along one axis, to or fro. */
  public static boolean alongside(double one, double other) {
    return Math.abs(Math.cos(one - other)) >= ALONG;
  }

  private static List<Point> those(LoadReadings readings, Predicate<Point> which) {
    return readings.points().stream().filter(which).toList();
  }

  private static LoadLines shaped(
      List<Point> used, List<Point> rest, List<Integer> zeroings, int elsewhere, int across) {
    boolean secant = used.stream().noneMatch(p -> used.stream().anyMatch(q -> differs(p, q)));
    boolean play = !secant && used.stream().anyMatch(p -> used.stream().anyMatch(q -> faces(p, q)));
    var plain = new LoadLines(used, rest, zeroings, secant, play, false, elsewhere, across);
    var looped = new LoadLines(used, rest, zeroings, secant, play, true, elsewhere, across);
    return looped.branched() && looped.bears(looped.design()) ? looped : plain;
  }

  private static boolean differs(Point p, Point q) {
    return p.zeroed() == q.zeroed() && sign(p) == sign(q) && p.load() != q.load();
  }

  private static boolean faces(Point p, Point q) {
    return p.zeroed() == q.zeroed() && sign(p) != sign(q);
  }

  private boolean branched() {
    return !secant
        && loaded.stream().anyMatch(p -> p.branch() == Branch.UP)
        && loaded.stream().anyMatch(p -> p.branch() == Branch.DOWN);
  }

  private boolean bears(double[][] design) {
    return design.length > design[0].length && independent(design);
  }

  /** Whether the columns of a design are independent. */
  public static boolean independent(double[][] design) {
    if (design.length < design[0].length) {
      return false;
    }
    try {
      return LeastSquares.fit(design, Samples.generate(design.length, i -> 0)).dof() >= 0;
    } catch (IllegalArgumentException dependent) {
      return false;
    }
  }

  /**
   * The rows of the fit: unloaded readings tell of the play and not of the slope, save a secant.
   */
  public List<Point> rows() {
    if (!secant) {
      return loaded;
    }
    List<Point> both = new ArrayList<>(unloaded);
    both.addAll(loaded);
    return both;
  }

  public int slopeColumn() {
    return zeroings.size();
  }

  public int playColumn() {
    return slopeColumn() + 1;
  }

  public int loopColumn() {
    return slopeColumn() + (play ? 2 : 1);
  }

  /** Offsets, then force along the dial, then half the play's sign, then half the branch's. */
  public double[][] design() {
    List<Point> rows = rows();
    double[][] design =
        new double[rows.size()][zeroings.size() + 1 + (play ? 1 : 0) + (loop ? 1 : 0)];
    for (int i = 0; i < design.length; i++) {
      Point p = rows.get(i);
      design[i][zeroings.indexOf(p.zeroed())] = 1;
      design[i][slopeColumn()] = along(p);
      if (play) {
        design[i][playColumn()] = sign(p) / 2;
      }
      if (loop) {
        design[i][loopColumn()] = sign(p) * branch(p) / 2;
      }
    }
    return design;
  }

  public Samples readings() {
    List<Point> rows = rows();
    return Samples.generate(rows.size(), i -> rows.get(i).reading());
  }

  /** Cosine between push and dial. */
  public static double cosine(Point p) {
    return Math.cos(p.direction() - p.dial());
  }

  public static double sign(Point p) {
    return Math.signum(cosine(p));
  }

  /** Stated force along the dial; none without load. */
  public static double along(Point p) {
    return p.load() == 0 ? 0 : p.load() * cosine(p);
  }

  /** A falling load leaves the nose further over than a rising one. */
  public static double branch(Point p) {
    return switch (p.branch()) {
      case UP -> -1;
      case DOWN -> 1;
      case UNSAID -> 0;
    };
  }

  /** Loaded rows by setting of the dial and side pushed to, in the order first met. */
  public List<List<Point>> sides() {
    Map<String, List<Point>> sides = new LinkedHashMap<>();
    for (Point p : loaded) {
      sides.computeIfAbsent(p.zeroed() + " " + sign(p), k -> new ArrayList<>()).add(p);
    }
    return List.copyOf(sides.values());
  }
}
