package rundlauf.reduce.sideload;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rundlauf.maths.Draws;
import rundlauf.maths.LeastSquares;
import rundlauf.maths.Samples;
import rundlauf.quantity.Cause;
import rundlauf.quantity.Drawn;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Interval;
import rundlauf.quantity.Measured;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Unit;
import rundlauf.readings.LoadReadings;
import rundlauf.reduce.push.LoadLines;

/**
 * Carries the travel of a body to where the load is: a rigid body's travel is linear in the
 * distance, so two places tell its shift and tilt.
 */
record Carrying(LoadReadings readings, Quantity contact, Draws draws) {
  private static final double SAME = 1e-9;
  private static final Unit UNIT = Unit.MICROMETRE_PER_NEWTON;

  /** Where a line's dial stood [m]; on the shank without a distance, where the load was. */
  double at(Slope line) {
    return line.at().orElse(contact.si());
  }

  private double ahead(Slope line) {
    return at(line) - contact.si();
  }

  /** The line whose dial stood where the load was. */
  Optional<Slope> atLoad(List<Slope> lines) {
    return lines.stream().filter(line -> Math.abs(ahead(line)) < SAME).findFirst();
  }

  /**
   * A rigid body's travel at the load.
   *
   * @param position of the body in the row
   * @param lines of the body, one or more, each at a distance of its own
   * @return the travel [m/N] where the dial stood at the load, or at two distances or more; else
   *     its least where the dial stood nearer the nut than the load, and its most where it stood
   *     farther out: the body is taken to tip the way it is pushed
   */
  Travel rigid(int position, List<Slope> lines) {
    Optional<Slope> there = atLoad(lines);
    if (there.isPresent()) {
      return new Travel(position, there.get().compliance(), Travel.Kind.KNOWN);
    }
    if (LoadLines.independent(design(lines))) {
      return new Travel(position, carried(lines, List.of()), Travel.Kind.KNOWN);
    }
    Slope one = lines.get(0);
    Travel.Kind kind = ahead(one) < 0 ? Travel.Kind.AT_LEAST : Travel.Kind.AT_MOST;
    return new Travel(position, one.compliance(), kind);
  }

  /** The shank where it is pushed, and as a rigid body there; none where it cannot be told. */
  List<Travel> shank(List<Slope> lines) {
    Optional<Drawn> whole =
        atLoad(lines)
            .map(Slope::compliance)
            .or(() -> readings.body().flatMap(b -> whole(b, lines)));
    List<Travel> all = new ArrayList<>();
    whole.ifPresent(w -> all.add(new Travel(0, w, Travel.Kind.KNOWN)));
    whole.ifPresent(
        w ->
            bending().ifPresent(own -> all.add(new Travel(1, without(w, own), Travel.Kind.KNOWN))));
    return all;
  }

  /** From two distances or more, none at the load. */
  private Optional<Drawn> whole(LoadReadings.Body body, List<Slope> lines) {
    if (!LoadLines.independent(design(lines))) {
      return Optional.empty();
    }
    List<Measured> bent = lines.stream().map(line -> bending(body, at(line))).toList();
    Drawn rigid = carried(lines, bent);
    Measured own = bending(body, contact.si());
    return Optional.of(Drawn.through(v -> v[0] + v[1], UNIT, draws, rigid, own));
  }

  /** The shank's own bending under a load and a dial at the load; none where it is not known. */
  Optional<Measured> bending() {
    return readings.body().map(body -> bending(body, contact.si()));
  }

  /** The two values differ by the bending's value, so that shares add up. */
  private Drawn without(Drawn whole, Measured own) {
    Drawn rest = Drawn.through(v -> v[0] - v[1], UNIT, draws, whole, own);
    double value = whole.value() - own.value();
    Interval interval = rest.estimate().orElseThrow().interval();
    return interval.holds(value)
        ? Drawn.of(UNIT, rest.draws(draws), rest.weights(), value, interval, rest.effects())
        : rest;
  }

  private Measured bending(LoadReadings.Body body, double dial) {
    return ShankBending.of(body, contact, dial, readings.head().name());
  }

  /** By least squares over the lines, weighted by their own doubts; bending taken out before. */
  private Drawn carried(List<Slope> lines, List<Measured> bending) {
    int n = lines.size();
    double[][] solver = solver(lines);
    List<Figure> inputs = new ArrayList<>();
    inputs.add(contact.measured(Cause.rectangular(readings.head().name(), "contact")));
    lines.forEach(line -> inputs.add(line.compliance()));
    inputs.addAll(bending);
    boolean bent = !bending.isEmpty();
    return Drawn.through(
        v -> {
          double sum = 0;
          for (int i = 0; i < n; i++) {
            double rigid = v[1 + i] - (bent ? v[1 + n + i] : 0);
            sum += (solver[0][i] + solver[1][i] * (v[0] - contact.si())) * rigid;
          }
          return sum;
        },
        UNIT,
        draws,
        inputs.toArray(Figure[]::new));
  }

  /** Distances from the load. */
  private double[][] design(List<Slope> lines) {
    return lines.stream().map(l -> new double[] {1, ahead(l)}).toArray(double[][]::new);
  }

  /** What each line does to the travel at the load, and to the tilt. */
  private double[][] solver(List<Slope> lines) {
    int n = lines.size();
    double[][] solver = new double[2][n];
    Samples weights = Samples.generate(n, i -> 1 / Math.pow(lines.get(i).ownDoubt(), 2));
    var design = new LeastSquares.Design(design(lines), weights);
    for (int j = 0; j < n; j++) {
      int one = j;
      Samples column = design.fit(Samples.generate(n, i -> i == one ? 1 : 0)).coefficients();
      solver[0][j] = column.get(0);
      solver[1][j] = column.get(1);
    }
    return solver;
  }
}
