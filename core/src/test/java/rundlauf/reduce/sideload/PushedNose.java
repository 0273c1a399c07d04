package rundlauf.reduce.sideload;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import rundlauf.maths.Stream;
import rundlauf.quantity.Cause;
import rundlauf.quantity.Measured;
import rundlauf.quantity.Unit;
import rundlauf.readings.IndicatorLimits;
import rundlauf.readings.LoadReadings;
import rundlauf.readings.TrialHead;

/**
 * A nose of known stiffness pushed under a coarse dial, as made readings.
 *
 * @param stiffness N/m
 * @param play m
 * @param loop loop width at equal load, m
 * @param scatter of a reading before it is rounded, m
 * @param loads how many, evenly up to {@code most}
 * @param most largest load, N
 * @param both pushed to both sides on one setting of the dial, else to one
 * @param down read with falling load too
 * @param sticky the needle lags the surface by up to this, m
 * @param forceLimit the force is off by a share within ± this
 */
public record PushedNose(
    double stiffness,
    double play,
    double loop,
    double scatter,
    int loads,
    double most,
    boolean both,
    boolean down,
    double sticky,
    double forceLimit) {
  static final double DIVISION = 10e-6;

  public static final TrialHead HEAD = head("push.yaml", Map.of());

  public static TrialHead head(String file, Map<String, String> conditions) {
    return new TrialHead(
        file, "side-load", Optional.empty(), Optional.empty(), Optional.empty(), conditions);
  }

  /** One trial; the force's error and the dial's zero are drawn anew. */
  public LoadReadings taken(Stream stream) {
    return taken(stream, 1 + forceLimit * (2 * stream.uniform() - 1), HEAD);
  }

  /** One trial with a lever that is off by a known factor. */
  public LoadReadings taken(Stream stream, double force, TrialHead head) {
    double zero = DIVISION * (stream.uniform() - 0.5);
    double[] needle = {Double.NaN};
    List<LoadReadings.Point> points = new ArrayList<>();
    for (int sign = 1; sign >= (both ? -1 : 1); sign -= 2) {
      add(points, sign, 0, 0, zero + rest(stream), stream, needle);
      for (int i = 1; i <= loads; i++) {
        double load = most * i / loads;
        add(points, sign, load, -1, zero + pushed(load * force, sign, -1), stream, needle);
      }
      for (int i = loads - 1; down && i >= 1; i--) {
        double load = most * i / loads;
        add(points, sign, load, 1, zero + pushed(load * force, sign, 1), stream, needle);
      }
      if (down) {
        add(points, sign, 0, 1, zero + rest(stream), stream, needle);
      }
    }
    return readings(points, forceLimit, dial(Optional.empty(), OptionalDouble.empty()), head);
  }

  private double pushed(double force, int sign, int branch) {
    return sign * (force / stiffness + play / 2 + branch * loop / 2);
  }

  private double rest(Stream stream) {
    return play * (stream.uniform() - 0.5);
  }

  private void add(
      List<LoadReadings.Point> points,
      int sign,
      double load,
      int branch,
      double surface,
      Stream stream,
      double[] needle) {
    double moved = surface + scatter * stream.gaussian();
    double lag = Math.max(-sticky, Math.min(sticky, needle[0] - moved));
    needle[0] = Double.isNaN(needle[0]) ? moved : moved + lag;
    double read = DIVISION * Math.rint(needle[0] / DIVISION);
    points.add(
        new LoadReadings.Point(
            load,
            read,
            "shank",
            Optional.empty(),
            sign > 0 ? 0 : Math.PI,
            0,
            branch > 0 ? LoadReadings.Branch.DOWN : LoadReadings.Branch.UP,
            1,
            points.size() + 1));
  }

  /** Points as a trial. */
  public static LoadReadings readings(
      List<LoadReadings.Point> points, double forceLimit, IndicatorLimits dial, TrialHead head) {
    return readings(points, forceLimit, dial, head, Optional.empty());
  }

  /** Pushed off from a body; the dial's foot stands on the table. */
  static LoadReadings readings(
      List<LoadReadings.Point> points,
      double forceLimit,
      IndicatorLimits dial,
      TrialHead head,
      Optional<String> reaction) {
    Measured one = Measured.exact(1, Unit.ONE);
    return new LoadReadings(
        head,
        dial,
        forceLimit > 0
            ? one.with(Cause.rectangular("rig/lever", "arms"), forceLimit / Math.sqrt(3))
            : one,
        Optional.empty(),
        Optional.empty(),
        Optional.of("table"),
        reaction,
        points);
  }

  public static IndicatorLimits dial(
      Optional<IndicatorLimits.LimitOfError> limit, OptionalDouble hysteresis) {
    return dial(DIVISION, limit, hysteresis);
  }

  static IndicatorLimits dial(
      double step, Optional<IndicatorLimits.LimitOfError> limit, OptionalDouble hysteresis) {
    return new IndicatorLimits(
        "indicator/dial",
        step,
        step,
        limit,
        hysteresis,
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        Optional.empty());
  }
}
