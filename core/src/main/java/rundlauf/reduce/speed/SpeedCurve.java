package rundlauf.reduce.speed;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rundlauf.maths.Draws;
import rundlauf.maths.Isotonic;
import rundlauf.maths.Samples;
import rundlauf.maths.WeightedSamples;
import rundlauf.quantity.Cause;
import rundlauf.quantity.Drawn;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Interval;
import rundlauf.quantity.Measured;
import rundlauf.quantity.Unit;
import rundlauf.reduce.speed.SpeedLevels.Level;

/**
 * The rising curve through the levels: pooled where they fall, straight between settings.
 *
 * @param settings rising
 * @param speeds as many, never falling [1/s]
 */
record SpeedCurve(List<Level> levels, Samples settings, Samples speeds) {
  /**
   * The slopes beside a gap tell its bend only roughly; our choice, by simulation with dials that
   * saturate and that wave.
   */
  private static final double BOW_DOUBT = 2;

  static SpeedCurve of(List<Level> levels) {
    Samples settings = Samples.generate(levels.size(), i -> levels.get(i).setting());
    Samples raw = Samples.generate(levels.size(), i -> levels.get(i).speed().value());
    return new SpeedCurve(levels, settings, Isotonic.fit(raw, counts(levels)));
  }

  private static Samples counts(List<Level> levels) {
    return Samples.generate(levels.size(), i -> levels.get(i).readings());
  }

  /** The curve's figures: a level as it is, or the mean of the levels pooled into one. */
  List<Speed.CurvePoint> points() {
    List<Speed.CurvePoint> points = new ArrayList<>();
    for (int i = 0; i < levels.size(); i++) {
      points.add(new Speed.CurvePoint(settings.get(i), pooled(speeds.get(i))));
    }
    return points;
  }

  private Measured pooled(double speed) {
    List<Level> block = new ArrayList<>();
    for (int i = 0; i < levels.size(); i++) {
      if (speeds.get(i) == speed) {
        block.add(levels.get(i));
      }
    }
    double sum = counts(block).sum();
    return block.size() == 1
        ? block.get(0).speed()
        : Measured.through(
            v -> {
              double mean = 0;
              for (int i = 0; i < v.length; i++) {
                mean += v[i] * block.get(i).readings() / sum;
              }
              return mean;
            },
            Unit.RPM,
            block.stream().map(Level::speed).toArray(Measured[]::new));
  }

  double lowest() {
    return speeds.get(0);
  }

  double highest() {
    return speeds.get(speeds.size() - 1);
  }

  /** Whether the curve has this speed, to within rounding. */
  boolean reaches(double speed) {
    double slack = 1e-9 * highest();
    return speed >= lowest() - slack && speed <= highest() + slack;
  }

  /**
   * The setting of a speed: draw by draw through the whole curve, and between two settings the
   * curve may bow by what its neighbours' slopes differ.
   *
   * @param speed [1/s], within the curve
   * @param unit of the settings
   */
  Figure settingFor(double speed, String file, Unit unit, Draws draws) {
    double at = inverse(speeds, speed);
    Measured bow = Measured.exact(0, unit);
    double reach = BOW_DOUBT * bow(at);
    if (reach > 0) {
      bow = bow.with(Cause.rectangular(file, "between-settings"), reach / Math.sqrt(3));
    }
    List<Samples> columns = columns(draws);
    Samples bows = bow.draws(draws);
    Samples weights = counts(levels);
    Samples found =
        Samples.generate(
            draws.count(),
            k -> {
              Samples drawn = Samples.generate(columns.size(), i -> columns.get(i).get(k));
              return unit.toSi(inverse(Isotonic.fit(drawn, weights), speed) + bows.get(k));
            });
    Samples even = Samples.generate(draws.count(), i -> 1.0);
    var spread = WeightedSamples.of(found);
    double tail = (1 - Interval.LEVEL) / 2;
    double value = unit.toSi(at);
    var interval =
        new Interval(
            Math.min(value, spread.quantile(tail)),
            Math.max(value, spread.quantile(1 - tail)),
            Interval.LEVEL);
    return Drawn.of(unit, found, even, value, interval, effects(speed, bow, unit));
  }

  private List<Samples> columns(Draws draws) {
    Samples factors =
        levels.get(0).speed().effects().keySet().stream()
            .filter(cause -> cause.shape() instanceof Cause.Shape.Student)
            .findFirst()
            .map(
                cause ->
                    draws.stream(cause.id() + " pooled").scatterFactors(draws.count(), cause.dof()))
            .orElseGet(() -> Samples.generate(draws.count(), k -> 1));
    return levels.stream().map(level -> level.draws(draws, factors)).toList();
  }

  private Map<Cause, Double> effects(double speed, Measured bow, Unit unit) {
    Map<Cause, Double> all = new LinkedHashMap<>();
    Measured[] inputs = levels.stream().map(Level::speed).toArray(Measured[]::new);
    Samples weights = counts(levels);
    Measured.through(
            v -> unit.toSi(inverse(Isotonic.fit(Samples.of(v), weights), speed)), unit, inputs)
        .effects()
        .forEach((cause, effect) -> all.merge(cause, effect, Double::sum));
    bow.effects().forEach((cause, effect) -> all.put(cause, unit.toSi(effect)));
    all.values().removeIf(effect -> effect == 0);
    return all;
  }

  /** The middle of all settings at which the curve has this speed; its ends beyond it. */
  private double inverse(Samples curve, double speed) {
    int n = curve.size();
    if (speed <= curve.get(0) || speed >= curve.get(n - 1)) {
      double end = speed <= curve.get(0) ? curve.get(0) : curve.get(n - 1);
      int[] flat = indices(curve, end);
      boolean reached = speed == end;
      double low = settings.get(flat[0]);
      double high = settings.get(flat[flat.length - 1]);
      return reached ? (low + high) / 2 : speed < end ? low : high;
    }
    int[] flat = indices(curve, speed);
    if (flat.length > 0) {
      return (settings.get(flat[0]) + settings.get(flat[flat.length - 1])) / 2;
    }
    int i = 1;
    while (curve.get(i) < speed) {
      i++;
    }
    double part = (speed - curve.get(i - 1)) / (curve.get(i) - curve.get(i - 1));
    return settings.get(i - 1) + part * (settings.get(i) - settings.get(i - 1));
  }

  private static int[] indices(Samples curve, double speed) {
    int[] all = new int[curve.size()];
    int count = 0;
    for (int i = 0; i < all.length; i++) {
      if (curve.get(i) == speed) {
        all[count] = i;
        count++;
      }
    }
    return Arrays.copyOf(all, count);
  }

  /**
   * How far the true setting may lie from the straight line's: a parabola over the gap bows by t (1
   * − t) h² f″ / 2, with f″ from the slopes of the gaps beside it, over the gap's own slope.
   */
  private double bow(double at) {
    int i = 1;
    while (i < settings.size() - 1 && settings.get(i) < at) {
      i++;
    }
    if (settings.size() < 3) {
      return 0;
    }
    double gap = settings.get(i) - settings.get(i - 1);
    double slope = slope(i);
    double change = 0;
    if (i > 1) {
      change = Math.max(change, Math.abs(slope - slope(i - 1)) / (gap + gap(i - 1)) * 2);
    }
    if (i < settings.size() - 1) {
      change = Math.max(change, Math.abs(slope(i + 1) - slope) / (gap + gap(i + 1)) * 2);
    }
    double part = (at - settings.get(i - 1)) / gap;
    double off = part * (1 - part) * gap * gap * change / 2;
    double furthest = Math.min(part, 1 - part) * gap;
    return slope == 0 ? 0 : Math.min(off / slope, furthest / BOW_DOUBT);
  }

  private double gap(int i) {
    return settings.get(i) - settings.get(i - 1);
  }

  private double slope(int i) {
    return (speeds.get(i) - speeds.get(i - 1)) / gap(i);
  }
}
