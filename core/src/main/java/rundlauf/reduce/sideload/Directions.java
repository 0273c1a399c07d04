package rundlauf.reduce.sideload;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rundlauf.maths.Draws;
import rundlauf.maths.LeastSquares;
import rundlauf.maths.Samples;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Cause;
import rundlauf.quantity.Drawn;
import rundlauf.quantity.DrawnVector;
import rundlauf.quantity.DrawnVector.Effect;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Polar;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.reduce.push.Inverse;
import rundlauf.reduce.push.LoadLines;
import rundlauf.reduce.sideload.Compliances.Axis;

/**
 * The symmetric 2 × 2 compliance of one place, from pushes in three or more directions. A dial
 * along u sees {@code uᵀ C w} of a push along w; C is a mean and a vector {@code (Cxx − Cyy, 2 Cxy)
 * / 2} whose angle is twice that of the soft axis.
 */
final class Directions {
  private static final int FEWEST = 3;

  private Directions() {}

  /**
   * Soft axis, then stiff axis.
   *
   * @param all lines of a trial; those of the first one's place are used
   * @return angles by draws in [0, π) rad and stiffness [N/m]; missing with fewer than three
   *     directions, or where the compliance cannot be told from a round one
   * @see "docs/methods/side-load.md"
   */
  static List<Axis> of(List<Slope> all, Draws draws) {
    List<Slope> here = all.isEmpty() ? List.of() : SamePlace.as(all.get(0), all);
    if (here.size() < FEWEST) {
      return none(Saying.of("directions-too-few", "directions", Arg.of(here.size())));
    }
    double[][] rows = here.stream().map(Directions::row).toArray(double[][]::new);
    if (!LoadLines.independent(rows)) {
      return none(Saying.of("directions-dial-not-turned", "directions"));
    }
    Samples weights = Samples.generate(here.size(), i -> 1 / square(scatter(here.get(i))));
    double[][] solver = solver(rows, weights);
    Drawn mean = component(here, solver[0], draws);
    DrawnVector vector =
        vector(component(here, solver[1], draws), component(here, solver[2], draws), draws);
    return Polar.zeroExcluded(vector)
        ? axes(mean, vector, draws)
        : none(
            Saying.of(
                "directions-round",
                "directions",
                Arg.of(1 / mean.value(), Unit.NEWTON_PER_MICROMETRE)));
  }

  /** The lines that the axes are taken from. */
  static List<Compliances.Push> pushes(List<Slope> all) {
    List<Compliances.Push> pushes = new ArrayList<>();
    for (Slope s : SamePlace.as(all.get(0), all)) {
      pushes.add(new Compliances.Push(s.push(), s.dial(), s.compliance()));
    }
    return pushes;
  }

  private static List<Axis> none(Saying why) {
    return List.of(Axis.missing(why), Axis.missing(why));
  }

  /** Mean, half difference and cross compliance in what the dial saw. */
  private static double[] row(Slope s) {
    double both = s.dial() + s.push();
    return new double[] {Math.cos(s.dial() - s.push()), Math.cos(both), Math.sin(both)};
  }

  /** The line's own doubt on the dial; what all lines share weighs on none of them. */
  private static double scatter(Slope s) {
    return s.ownDoubt() * Math.abs(Math.cos(s.dial() - s.push()));
  }

  private static double square(double x) {
    return x * x;
  }

  /** What each line's compliance does to each component. */
  private static double[][] solver(double[][] rows, Samples weights) {
    int n = rows.length;
    double[][] solver = new double[FEWEST][n];
    var design = new LeastSquares.Design(rows, weights);
    for (int j = 0; j < n; j++) {
      int one = j;
      double seen = rows[j][0];
      Samples column = design.fit(Samples.generate(n, i -> i == one ? seen : 0)).coefficients();
      for (int c = 0; c < FEWEST; c++) {
        solver[c][j] = column.get(c);
      }
    }
    return solver;
  }

  private static Drawn component(List<Slope> here, double[] factors, Draws draws) {
    Figure[] inputs = here.stream().map(Slope::compliance).toArray(Figure[]::new);
    return Drawn.through(v -> dot(factors, v), Unit.MICROMETRE_PER_NEWTON, draws, inputs);
  }

  private static double dot(double[] factors, double[] values) {
    double sum = 0;
    for (int i = 0; i < factors.length; i++) {
      sum += factors[i] * values[i];
    }
    return sum;
  }

  private static DrawnVector vector(Drawn a, Drawn b, Draws draws) {
    Map<Cause, Effect> effects = new LinkedHashMap<>();
    a.effects()
        .forEach(
            (cause, e) -> effects.put(cause, new Effect(e, b.effects().getOrDefault(cause, 0.0))));
    b.effects().forEach((cause, e) -> effects.putIfAbsent(cause, new Effect(0, e)));
    return new DrawnVector(a.draws(draws), b.draws(draws), effects);
  }

  private static List<Axis> axes(Drawn mean, DrawnVector vector, Draws draws) {
    Drawn size = Polar.magnitude(vector, Unit.MICROMETRE_PER_NEWTON);
    List<Axis> axes = new ArrayList<>();
    for (int sign = 1; sign >= -1; sign -= 2) {
      int along = sign;
      Drawn compliance =
          Drawn.through(v -> v[0] + along * v[1], Unit.MICROMETRE_PER_NEWTON, draws, mean, size);
      Figure angle = Polar.angle(vector.times(sign), "directions");
      axes.add(
          new Axis(
              angle instanceof Drawn known ? known.times(0.5) : angle,
              Inverse.of(compliance, "side-load-too-stiff", "directions", draws)));
    }
    return axes;
  }
}
