package rundlauf.maths;

import java.util.ArrayList;
import java.util.List;

/** The smallest circle round points: it rests on two of them or on three. */
public final class EnclosingCircle {
  private static final double TOUCHING = 1e-13;

  private EnclosingCircle() {}

  /**
   * Minimum circumscribed circle. The farthest point outside joins those it rests on; of these four
   * at most, the smallest circle that holds them all is tried among pairs and triples. The radius
   * grows with each, so it ends.
   *
   * @param xs n ≥ 2 points, any unit
   * @param ys as many
   * @return its centre with the nearest and the farthest point
   */
  public static Circle of(Samples xs, Samples ys) {
    List<Integer> contacts = new ArrayList<>(List.of(0, xs.size() / 2));
    double[] circle = smallest(contacts, xs, ys);
    for (int k = 0; k < xs.size() * xs.size(); k++) {
      int farthest = farthest(circle, xs, ys);
      if (contacts.contains(farthest)
          || Circle.distance(circle[0], circle[1], xs, ys, farthest)
              <= circle[2] * (1 + TOUCHING)) {
        break;
      }
      contacts.add(farthest);
      circle = smallest(contacts, xs, ys);
    }
    return Circle.about(circle[0], circle[1], xs, ys);
  }

  private static int farthest(double[] circle, Samples xs, Samples ys) {
    int farthest = 0;
    double most = 0;
    for (int i = 0; i < xs.size(); i++) {
      double far = Circle.distance(circle[0], circle[1], xs, ys, i);
      if (far > most) {
        most = far;
        farthest = i;
      }
    }
    return farthest;
  }

  /** The smallest that holds these few; {@code contacts} is left with those it rests on. */
  private static double[] smallest(List<Integer> contacts, Samples xs, Samples ys) {
    double[] best = {0, 0, Double.POSITIVE_INFINITY};
    List<Integer> on = List.of();
    int n = contacts.size();
    for (int i = 0; i < n; i++) {
      for (int j = i + 1; j < n; j++) {
        for (int k = j; k < n; k++) {
          List<Integer> some =
              k == j
                  ? List.of(contacts.get(i), contacts.get(j))
                  : List.of(contacts.get(i), contacts.get(j), contacts.get(k));
          double[] circle = through(some, xs, ys);
          if (circle[2] < best[2] && holds(circle, contacts, xs, ys)) {
            best = circle;
            on = some;
          }
        }
      }
    }
    contacts.clear();
    contacts.addAll(on);
    return best;
  }

  private static boolean holds(double[] circle, List<Integer> points, Samples xs, Samples ys) {
    return points.stream()
        .allMatch(
            i -> Circle.distance(circle[0], circle[1], xs, ys, i) <= circle[2] * (1 + TOUCHING));
  }

  /** Centre and radius through two (as a diameter) or three points. */
  private static double[] through(List<Integer> points, Samples xs, Samples ys) {
    double ax = xs.get(points.get(0));
    double ay = ys.get(points.get(0));
    double bx = xs.get(points.get(1)) - ax;
    double by = ys.get(points.get(1)) - ay;
    if (points.size() == 2) {
      return new double[] {ax + bx / 2, ay + by / 2, Math.hypot(bx, by) / 2};
    }
    double cx = xs.get(points.get(2)) - ax;
    double cy = ys.get(points.get(2)) - ay;
    double d = 2 * (bx * cy - by * cx);
    if (d == 0) {
      return new double[] {0, 0, Double.POSITIVE_INFINITY};
    }
    double bb = bx * bx + by * by;
    double cc = cx * cx + cy * cy;
    double x = (cy * bb - by * cc) / d;
    double y = (bx * cc - cx * bb) / d;
    return new double[] {ax + x, ay + y, Math.hypot(x, y)};
  }
}
