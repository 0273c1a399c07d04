package rundlauf.reduce.runout;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import rundlauf.maths.LeastSquares;
import rundlauf.maths.Samples;

/**
 * Which parts the clock angles of c clampings can tell apart: {@code E_j = Σ E_p exp(−i·clock_pj)}.
 * Parts whose clocks keep one difference in all clampings turn as one body and are joined.
 *
 * @param bodies what can be told apart, the spindle's first; one alone when nothing can
 * @param turns columns of the fit: how each is turned, as many as the clampings bear
 */
record PartsDesign(List<Body> bodies, List<Samples> turns, List<Clock> clocks) {
  static final String SPINDLE = "spindle";
  static final String COLLET = "collet";
  static final String SHANK = "shank";

  /**
   * Parts that turn as one.
   *
   * @param parts their names, spindle before collet before shank
   * @param offset how far the shank stands forward of the collet where both are in it [rad]
   */
  record Body(List<String> parts, double offset) {
    Body {
      parts = List.copyOf(parts);
    }

    String name() {
      return String.join("+", parts);
    }

    boolean has(String part) {
      return parts.contains(part);
    }

    /** How far it is turned when the parts stand so: the spindle never is [rad]. */
    double turned(Clock clock) {
      return has(SPINDLE) ? 0 : has(COLLET) ? clock.collet() : clock.shank();
    }
  }

  PartsDesign {
    bodies = List.copyOf(bodies);
    turns = List.copyOf(turns);
    clocks = List.copyOf(clocks);
  }

  /** Of c ≥ 1 clampings. */
  static PartsDesign of(List<Clock> clocks) {
    Clock first = clocks.get(0);
    boolean collet = turnsAgainst(clocks, Clock::collet);
    boolean shank = turnsAgainst(clocks, Clock::shank);
    boolean apart = turnsAgainst(clocks, c -> c.shank() - c.collet());
    List<String> still = new ArrayList<>(List.of(SPINDLE));
    if (!collet) {
      still.add(COLLET);
    }
    if (!shank) {
      still.add(SHANK);
    }
    List<Body> bodies = new ArrayList<>(List.of(new Body(still, 0)));
    if (collet && shank && !apart) {
      bodies.add(new Body(List.of(COLLET, SHANK), first.shank() - first.collet()));
    } else {
      if (collet) {
        bodies.add(new Body(List.of(COLLET), 0));
      }
      if (shank) {
        bodies.add(new Body(List.of(SHANK), 0));
      }
    }
    return fitted(bodies, clocks);
  }

  private static boolean turnsAgainst(List<Clock> clocks, ToDoubleFunction<Clock> angle) {
    double first = angle.applyAsDouble(clocks.get(0));
    return clocks.stream().anyMatch(c -> !Clock.same(angle.applyAsDouble(c), first));
  }

  /**
   * Three bodies need three ways of standing; two such ways bear two columns, of which none is one
   * part alone.
   */
  private static PartsDesign fitted(List<Body> bodies, List<Clock> clocks) {
    List<Samples> turns = new ArrayList<>();
    for (Body body : bodies) {
      turns.add(Samples.generate(clocks.size(), j -> body.turned(clocks.get(j))));
    }
    if (bodies.size() <= ways(clocks)) {
      return new PartsDesign(bodies, turns, clocks);
    }
    Body all = new Body(List.of(SPINDLE, COLLET, SHANK), 0);
    return new PartsDesign(List.of(all), turns.subList(0, 2), clocks);
  }

  private static int ways(List<Clock> clocks) {
    List<Clock> distinct = new ArrayList<>();
    for (Clock clock : clocks) {
      if (distinct.stream().noneMatch(clock::same)) {
        distinct.add(clock);
      }
    }
    return distinct.size();
  }

  /** Clampings left over to judge their scatter by. */
  int spare() {
    return clocks.size() - turns.size();
  }

  /** Whether every part stands alone. */
  boolean separated() {
    return bodies.size() == 3;
  }

  /**
   * The pseudo-inverse of the fit.
   *
   * @return for each column the complex weight of each clamping, real and imaginary part in turn
   */
  List<Samples> weights() {
    int c = clocks.size();
    int p = turns.size();
    double[][] rows = new double[2 * c][2 * p];
    for (int j = 0; j < c; j++) {
      for (int k = 0; k < p; k++) {
        double cos = Math.cos(turns.get(k).get(j));
        double sin = Math.sin(turns.get(k).get(j));
        rows[2 * j][2 * k] = cos;
        rows[2 * j][2 * k + 1] = sin;
        rows[2 * j + 1][2 * k] = -sin;
        rows[2 * j + 1][2 * k + 1] = cos;
      }
    }
    LeastSquares fit = LeastSquares.fit(rows, Samples.generate(2 * c, i -> 0));
    List<Samples> weights = new ArrayList<>();
    for (int k = 0; k < p; k++) {
      int column = 2 * k;
      weights.add(Samples.generate(2 * c, i -> weight(fit, column + i % 2, rows[2 * (i / 2)])));
    }
    return weights;
  }

  /** How an a-reading acts on a coefficient: on a it is the weight's real part, on b the other. */
  private static double weight(LeastSquares fit, int coefficient, double[] row) {
    double sum = 0;
    for (int m = 0; m < row.length; m++) {
      sum += fit.unscaled(coefficient, m) * row[m];
    }
    return sum;
  }
}
