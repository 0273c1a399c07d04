package rundlauf.maths;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * The four reference circles of a roundness profile, ISO 12181-1: least squares, minimum zone,
 * minimum circumscribed, maximum inscribed. Least squares by Gauss–Newton steps; minimum zone and
 * maximum inscribed by a linear programme on the profile made linear about a centre, made linear
 * again about the centre found until it settles; minimum circumscribed exactly, by its contacts.
 *
 * @see "docs/methods/runout.md"
 */
public final class ReferenceCircles {
  private static final int MOST = 200;

  /** Of the profile's size: as far as doubles go. */
  private static final double SETTLED = 1e-12;

  /** Three nearly on one diameter are no start; our choice. */
  private static final double LEAST_BORNE = 0.05;

  private ReferenceCircles() {}

  /**
   * Least-squares circle: the sum of squared distances from the circle is least.
   *
   * @param xs n ≥ 4 points, not all on a line, any unit
   * @param ys as many
   * @return its centre with the nearest and the farthest point; nothing when the steps do not
   *     settle
   */
  public static Optional<Circle> leastSquares(Samples xs, Samples ys) {
    double[] centre = {xs.mean(), ys.mean()};
    for (int k = 0; k < 50 * MOST; k++) {
      double[][] rows = outward(centre, xs, ys, 1);
      LeastSquares fit = LeastSquares.fit(rows, Samples.of(distances(centre, xs, ys)));
      if (moved(centre, fit.coefficients().get(1), fit.coefficients().get(2), xs)) {
        return Optional.of(Circle.about(centre[0], centre[1], xs, ys));
      }
    }
    return Optional.empty();
  }

  /**
   * Minimum zone: the two circles about one centre with the least space between them. A local
   * minimum near {@code start}, which on a closed profile is the only one.
   *
   * @param start a centre near it
   */
  public static Optional<Circle> minimumZone(Circle start, Samples xs, Samples ys) {
    int n = xs.size();
    double[] centre = {start.x(), start.y()};
    int[] contacts = alternating(outward(centre, xs, ys, 1));
    for (int k = 0; k < MOST; k++) {
      double[][] out = outward(centre, xs, ys, 1);
      double[] distances = distances(centre, xs, ys);
      double[][] rows = new double[2 * n][];
      double[] right = new double[2 * n];
      for (int i = 0; i < n; i++) {
        rows[i] = new double[] {1, 1, out[i][1], out[i][2]};
        rows[n + i] = new double[] {1, -1, -out[i][1], -out[i][2]};
        right[i] = distances[i];
        right[n + i] = -distances[i];
      }
      Optional<double[]> v = solved(rows, right, contacts, () -> alternating(out));
      if (v.isEmpty()) {
        return Optional.empty();
      }
      if (moved(centre, v.get()[2], v.get()[3], xs)) {
        return Optional.of(Circle.about(centre[0], centre[1], xs, ys));
      }
    }
    return Optional.empty();
  }

  /**
   * Maximum inscribed circle with its centre inside the profile.
   *
   * @param start a centre inside
   * @return nothing where the points do not surround a centre, as on an arc
   */
  public static Optional<Circle> maximumInscribed(Circle start, Samples xs, Samples ys) {
    double[] centre = {start.x(), start.y()};
    int[] contacts = surrounding(outward(centre, xs, ys, -1));
    for (int k = 0; k < MOST && contacts.length == 3; k++) {
      double[][] rows = outward(centre, xs, ys, -1);
      double[] right = Arrays.stream(distances(centre, xs, ys)).map(r -> -r).toArray();
      Optional<double[]> v = solved(rows, right, contacts, () -> surrounding(rows));
      if (v.isEmpty()) {
        return Optional.empty();
      }
      if (moved(centre, v.get()[1], v.get()[2], xs)) {
        return Optional.of(Circle.about(centre[0], centre[1], xs, ys));
      }
    }
    return Optional.empty();
  }

  private static Optional<double[]> solved(
      double[][] rows, double[] right, int[] contacts, Supplier<int[]> others) {
    Optional<double[]> weights =
        contacts.length == 0 ? Optional.empty() : VertexExchange.weights(rows, contacts);
    if (weights.isEmpty() || Arrays.stream(weights.get()).anyMatch(w -> w < 0)) {
      int[] anew = others.get();
      if (anew.length != contacts.length) {
        return Optional.empty();
      }
      for (int i = 0; i < anew.length; i++) {
        contacts[i] = anew[i];
      }
    }
    return VertexExchange.solve(rows, right, contacts);
  }

  /** Moves the centre; whether it has settled. */
  private static boolean moved(double[] centre, double x, double y, Samples xs) {
    centre[0] += x;
    centre[1] += y;
    double size = xs.max() - xs.min();
    return Math.hypot(x, y) <= SETTLED * size;
  }

  /** 1 and the direction from the centre to each point, times {@code sign}. */
  private static double[][] outward(double[] centre, Samples xs, Samples ys, int sign) {
    double[][] rows = new double[xs.size()][];
    for (int i = 0; i < rows.length; i++) {
      double far = Circle.distance(centre[0], centre[1], xs, ys, i);
      rows[i] =
          new double[] {
            1, sign * (xs.get(i) - centre[0]) / far, sign * (ys.get(i) - centre[1]) / far
          };
    }
    return rows;
  }

  private static double[] distances(double[] centre, Samples xs, Samples ys) {
    double[] all = new double[xs.size()];
    for (int i = 0; i < all.length; i++) {
      all[i] = Circle.distance(centre[0], centre[1], xs, ys, i);
    }
    return all;
  }

  /**
   * Four points round the profile, those without weight of their own sign as points of the inner
   * circle: any four directions bear a zone so.
   */
  private static int[] alternating(double[][] out) {
    int n = out.length;
    int[] at = {0, n / 4, n / 2, 3 * n / 4};
    double[][] three = new double[3][3];
    double[] fourth = new double[3];
    for (int r = 0; r < 3; r++) {
      for (int c = 0; c < 3; c++) {
        three[r][c] = out[at[c]][r];
      }
      fourth[r] = -out[at[3]][r];
    }
    Optional<double[]> shares = LinearSystem.solve(three, fourth);
    if (shares.isEmpty()) {
      return new int[0];
    }
    int[] contacts = at.clone();
    for (int c = 0; c < 3; c++) {
      contacts[c] += shares.get()[c] < 0 ? n : 0;
    }
    return contacts;
  }

  /** Three points that surround the centre; none when there are none. */
  private static int[] surrounding(double[][] rows) {
    int n = rows.length;
    int[] thirds = {0, n / 3, 2 * n / 3};
    if (surround(rows, thirds)) {
      return thirds;
    }
    for (int i = 0; i < n; i++) {
      for (int j = i + 1; j < n; j++) {
        for (int k = j + 1; k < n; k++) {
          int[] contacts = {i, j, k};
          if (surround(rows, contacts)) {
            return contacts;
          }
        }
      }
    }
    return new int[0];
  }

  /** Whether each of three points bears a part of its own. */
  private static boolean surround(double[][] rows, int[] contacts) {
    return VertexExchange.weights(rows, contacts)
        .map(weights -> Arrays.stream(weights).allMatch(w -> w > LEAST_BORNE))
        .orElse(false);
  }
}
