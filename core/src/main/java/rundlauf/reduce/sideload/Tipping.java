package rundlauf.reduce.sideload;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rundlauf.maths.Draws;
import rundlauf.quantity.Cause;
import rundlauf.quantity.Drawn;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Interval;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Unit;
import rundlauf.readings.LoadReadings;
import rundlauf.reduce.push.Inverse;
import rundlauf.reduce.push.LoadLines;

/**
 * How what gives way behind the shank tips and shifts, from lines on the shank at several distances
 * of load or dial.
 *
 * @param lines on the shank, along the first push
 * @param body the shank
 * @param contact the trial's distance of the load
 */
record Tipping(
    LoadReadings readings,
    List<Slope> lines,
    LoadReadings.Body body,
    Quantity contact,
    Draws draws) {
  private static final Unit UNIT = Unit.MICROMETRE_PER_NEWTON;

  /**
   * The lines that tell it; none with one distance of load and dial, or without the shank's body.
   */
  static Optional<Tipping> of(LoadReadings readings, List<Slope> all, Draws draws) {
    if (all.isEmpty() || readings.contact().isEmpty() || readings.body().isEmpty()) {
      return Optional.empty();
    }
    Slope first = all.get(0);
    List<Slope> lines =
        all.stream()
            .filter(l -> l.place().equals(Row.SHANK))
            .filter(l -> LoadLines.alongside(l.push(), first.push()))
            .filter(l -> LoadLines.alongside(l.dial(), first.dial()))
            .toList();
    var found =
        new Tipping(
            readings, lines, readings.body().get(), readings.contact().orElseThrow(), draws);
    return found.known() ? Optional.of(found) : found.widestPair();
  }

  /** Of lines that do not tell all three coefficients, the two that lie farthest apart. */
  private Optional<Tipping> widestPair() {
    List<Tipping> pairs = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      for (int j = i + 1; j < lines.size(); j++) {
        List<Slope> pair = List.of(lines.get(i), lines.get(j));
        pairs.add(new Tipping(readings, pair, body, contact, draws));
      }
    }
    return pairs.stream().filter(Tipping::limited).max(Comparator.comparingDouble(Tipping::apart));
  }

  /** How far loads and dials of two lines lie apart, summed [m]. */
  private double apart() {
    double at = contact.si();
    return Math.abs(load(1, at) - load(0, at)) + Math.abs(dial(1, at) - dial(0, at));
  }

  /** Whether the lines tell all three coefficients. */
  boolean known() {
    double[][] rows = rows(contact.si());
    return rows.length >= 3 && LoadLines.independent(rows);
  }

  /** Whether two lines leave one of them open, between limits. */
  private boolean limited() {
    double[][] rows = rows(contact.si());
    return rows.length == 2 && new TwoLines(rows).limited();
  }

  /** The distances of the loads [m], each once, rising. */
  List<Double> loads() {
    return lines.stream().map(l -> l.load().orElse(contact.si())).distinct().sorted().toList();
  }

  private double load(int i, double at) {
    return lines.get(i).load().orElse(at);
  }

  private double dial(int i, double at) {
    return lines.get(i).at().orElse(load(i, at));
  }

  /** Lengths over the trial's own contact or 10 mm, so that the columns are alike. */
  private double length() {
    return contact.si() > 0 ? contact.si() : 0.01;
  }

  private double[][] rows(double at) {
    double[][] rows = new double[lines.size()][];
    for (int i = 0; i < rows.length; i++) {
      double a = load(i, at) / length();
      double x = dial(i, at) / length();
      rows[i] = new double[] {1, a + x, a * x};
    }
    return rows;
  }

  /**
   * Stiffness with load and dial together at another distance.
   *
   * @param at from the nut's face [m]
   * @return [N/m], by draws; with two lines the interval reaches from the softest to the stiffest
   *     that they leave open
   */
  Figure stiffness(double at) {
    List<Figure> inputs = new ArrayList<>();
    inputs.add(contact.measured(Cause.rectangular(readings.head().name(), "contact")));
    lines.forEach(line -> inputs.add(line.compliance()));
    String file = readings.head().name();
    for (int i = 0; i < lines.size(); i++) {
      Quantity load =
          lines.get(i).load().map(x -> Quantity.exact(x, Unit.MILLIMETRE)).orElse(contact);
      inputs.add(ShankBending.of(body, load, dial(i, contact.si()), file));
    }
    inputs.add(ShankBending.of(body, Quantity.exact(at, Unit.MILLIMETRE), at, file));
    double[] weights =
        lines.stream().mapToDouble(line -> 1 / Math.pow(line.ownDoubt(), 2)).toArray();
    Figure[] all = inputs.toArray(Figure[]::new);
    Drawn middle = Drawn.through(v -> compliance(v, at, weights, 0.5), UNIT, draws, all);
    Figure stiffness = Inverse.of(middle, "side-load-too-stiff", "reach", draws);
    return known() || !(stiffness instanceof Drawn d)
        ? stiffness
        : widened(
            d,
            Drawn.through(v -> compliance(v, at, weights, 0), UNIT, draws, all),
            Drawn.through(v -> compliance(v, at, weights, 1), UNIT, draws, all));
  }

  private Figure widened(Drawn stiffness, Drawn one, Drawn other) {
    Figure first = Inverse.of(one, "side-load-too-stiff", "reach", draws);
    Figure second = Inverse.of(other, "side-load-too-stiff", "reach", draws);
    if (!(first instanceof Drawn a) || !(second instanceof Drawn b)) {
      return first instanceof Drawn ? second : first;
    }
    Interval i = interval(a);
    Interval j = interval(b);
    var wide =
        new Interval(Math.min(i.low(), j.low()), Math.max(i.high(), j.high()), Interval.LEVEL);
    return Drawn.of(
        stiffness.unit(),
        stiffness.draws(draws),
        stiffness.weights(),
        stiffness.value(),
        wide,
        stiffness.effects());
  }

  private static Interval interval(Figure figure) {
    return figure.estimate().orElseThrow().interval();
  }

  /**
   * Compliance at a distance for one state of the world.
   *
   * @param v the trial's contact, the lines, their shank's bending, the shank's bending there
   * @param open where the coefficient that two lines leave open lies between its limits, 0 to 1
   */
  private double compliance(double[] v, double at, double[] weights, double open) {
    int n = lines.size();
    double[] rigid = new double[n];
    for (int i = 0; i < n; i++) {
      rigid[i] = v[1 + i] - v[1 + n + i];
    }
    double[][] rows = rows(v[0]);
    double[] c =
        n == 2
            ? new TwoLines(rows).solved(rigid, open)
            : NormalEquations.solved(rows, rigid, weights);
    double b = at / length();
    return c[0] + 2 * c[1] * b + c[2] * b * b + v[1 + 2 * n];
  }
}
