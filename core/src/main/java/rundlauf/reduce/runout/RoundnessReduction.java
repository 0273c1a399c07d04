package rundlauf.reduce.runout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rundlauf.maths.Circle;
import rundlauf.maths.Draws;
import rundlauf.maths.EnclosingCircle;
import rundlauf.maths.ReferenceCircles;
import rundlauf.maths.Samples;
import rundlauf.maths.WeightedSamples;
import rundlauf.quantity.Cause;
import rundlauf.quantity.Drawn;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Interval;
import rundlauf.quantity.Polar;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.readings.IndicatorLimits;

/** Roundness of the form a sweep bears, draw by draw. */
final class RoundnessReduction {
  /** Points of a turn at which the form is taken: seven lobes have seventeen each. */
  private static final int POINTS = 120;

  /** Radius [m] where no gauge is named: so large that circle and limaçon are the same. */
  private static final double LIMACON = 1;

  /**
   * Draws whose circles are worked out where several orders make the form; those beyond repeat
   * them. Our choice: the ends of an interval then move by some 10 % of its width with the seed.
   */
  private static final int MOST_CIRCLES = 256;

  private RoundnessReduction() {}

  /**
   * Roundness deviations about the four reference circles.
   *
   * @param lobing the form; nothing: no room for it
   * @param radius of the body touched [m], where it is known
   * @param span what the dial moved over the turn [m]
   * @param record begins the ids of the sweep's own causes
   */
  static Form of(
      Optional<Lobing> lobing,
      Optional<Double> radius,
      IndicatorLimits dial,
      double span,
      String record,
      String about,
      Draws draws) {
    if (lobing.isEmpty()) {
      return Form.missing(Saying.of("form-no-room", about));
    }
    Lobing form = lobing.get();
    List<Samples> widths =
        form.orders().size() == 1 ? regular(form) : circles(form, radius.orElse(LIMACON), draws);
    List<Figure> figures = new ArrayList<>();
    for (Samples width : widths) {
      figures.add(figure(width, form, dial, span, record, draws));
    }
    Figure none = Form.missing(Saying.of("one-turn-only", about)).synchronous();
    return new Form(
        figures.get(0),
        figures.get(1),
        figures.get(2),
        figures.get(3),
        none,
        none,
        form.borne() ? Optional.of(drawn(form, radius.orElse(LIMACON))) : Optional.empty());
  }

  /** The form at the mean of its draws, as the fitted curve is. */
  private static FormCircles drawn(Lobing form, double radius) {
    Samples a = Samples.of(form.vectors().stream().map(v -> v.a().mean()).toList());
    Samples b = Samples.of(form.vectors().stream().map(v -> v.b().mean()).toList());
    return FormCircles.of(
        Samples.generate(POINTS, p -> height(form, a, b, FormCircles.angle(p, POINTS))), radius);
  }

  private static double height(Lobing form, Samples a, Samples b, double angle) {
    double[] row = Curve.row(angle, form.orders());
    double height = 0;
    for (int k = 0; k < a.size(); k++) {
      height += row[1 + 2 * k] * a.get(k) + row[2 + 2 * k] * b.get(k);
    }
    return height;
  }

  /** A regular lobing a · cos kθ has 2a about all four. */
  private static List<Samples> regular(Lobing form) {
    var vector = form.vectors().get(0);
    Samples width =
        Samples.generate(vector.count(), i -> 2 * Math.hypot(vector.a().get(i), vector.b().get(i)));
    return List.of(width, width, width, width);
  }

  private static List<Samples> circles(Lobing form, double radius, Draws draws) {
    double[][] rows = new double[POINTS][];
    for (int p = 0; p < POINTS; p++) {
      rows[p] = Curve.row(2 * Math.PI * p / POINTS, form.orders());
    }
    int count = Math.min(MOST_CIRCLES, draws.count());
    double[][] widths = new double[4][draws.count()];
    for (int i = 0; i < count; i++) {
      double[] of = widths(form, rows, radius, i);
      for (int c = 0; c < 4; c++) {
        widths[c][i] = of[c];
      }
    }
    return List.of(widths).stream()
        .map(row -> Samples.generate(row.length, i -> row[i % count]))
        .toList();
  }

  /** About the centres of least squares, minimum zone, circumscribed and inscribed circle. */
  private static double[] widths(Lobing form, double[][] rows, double radius, int draw) {
    Samples far = Samples.generate(POINTS, p -> radius + height(form, rows[p], draw));
    Samples xs = Samples.generate(POINTS, p -> far.get(p) * cosine(p));
    Samples ys = Samples.generate(POINTS, p -> far.get(p) * Math.sin(2 * Math.PI * p / POINTS));
    Circle squares = ReferenceCircles.leastSquares(xs, ys).orElseThrow();
    return new double[] {
      squares.width(),
      ReferenceCircles.minimumZone(squares, xs, ys).orElse(squares).width(),
      EnclosingCircle.of(xs, ys).width(),
      ReferenceCircles.maximumInscribed(squares, xs, ys).orElse(squares).width()
    };
  }

  private static double cosine(int p) {
    return Math.cos(2 * Math.PI * p / POINTS);
  }

  private static double height(Lobing form, double[] row, int draw) {
    double height = 0;
    for (int k = 0; k < form.orders().size(); k++) {
      var vector = form.vectors().get(k);
      height += row[1 + 2 * k] * vector.a().get(draw) + row[2 + 2 * k] * vector.b().get(draw);
    }
    return height;
  }

  /** The spread of the readings, and what the dial itself may feign. */
  private static Figure figure(
      Samples read, Lobing form, IndicatorLimits dial, double span, String record, Draws draws) {
    Map<Cause, Double> effects = new LinkedHashMap<>();
    effects.put(Cause.normal(record, "scatter-form"), read.standardDeviation());
    Samples widths = read;
    if (dial.limitOfError().isPresent()) {
      Cause cause = Cause.rectangular(dial.record(), "limit-of-error-form");
      double u = dial.limitOfError().get().over(span) / Math.sqrt(3);
      Samples standard = cause.draws(draws);
      widths = Samples.generate(read.size(), i -> Math.abs(read.get(i) + u * standard.get(i)));
      effects.put(cause, u);
    }
    Samples weights = weights(form);
    var spread = WeightedSamples.of(widths, weights);
    boolean there = form.borne() && form.vectors().stream().anyMatch(Polar::zeroExcluded);
    double low = there ? spread.quantile(Polar.TAIL) : 0;
    var interval = new Interval(low, spread.quantile(1 - Polar.TAIL), Interval.LEVEL);
    return Drawn.of(Unit.MICROMETRE, widths, weights, spread.quantile(0.5), interval, effects);
  }

  /** Flat in the amplitude of each order, as everywhere. */
  private static Samples weights(Lobing form) {
    Samples weights = Samples.generate(form.vectors().get(0).count(), i -> 1);
    for (var vector : form.vectors()) {
      Samples before = weights;
      Samples one = Polar.weights(vector);
      weights = Samples.generate(one.size(), i -> before.get(i) * one.get(i));
    }
    if (form.orders().size() > 1) {
      Samples all = weights;
      int count = Math.min(MOST_CIRCLES, all.size());
      return Samples.generate(all.size(), i -> all.get(i % count));
    }
    return weights;
  }
}
