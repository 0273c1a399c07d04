package rundlauf.simulated;

import java.util.List;
import java.util.stream.IntStream;

/**
 * How a runout trial is taken.
 *
 * @param stations from the nut's face [m]
 * @param clampings in order; how collet and shank stand in each
 * @param positions a turn, evenly spaced
 * @param turns whole turns
 * @param repeatFirst whether the first position is read again at the end
 * @param swingOnly only the needle's swing is written down
 */
public record RunoutPlan(
    List<Double> stations,
    List<Clamping> clampings,
    int positions,
    int turns,
    boolean repeatFirst,
    boolean swingOnly) {

  /**
   * One clamping.
   *
   * @param collet clock angle of the collet [rad]
   * @param shank clock angle of the shank [rad]
   */
  public record Clamping(double collet, double shank) {
    public static final Clamping AS_MARKED = new Clamping(0, 0);
  }

  public RunoutPlan {
    stations = List.copyOf(stations);
    clampings = List.copyOf(clampings);
  }

  /** One turn at one station in one clamping. */
  public static RunoutPlan oneTurn(double station, int positions) {
    return new RunoutPlan(
        List.of(station), List.of(Clamping.AS_MARKED), positions, 1, false, false);
  }

  public RunoutPlan at(Double... these) {
    return new RunoutPlan(List.of(these), clampings, positions, turns, repeatFirst, swingOnly);
  }

  public RunoutPlan clamped(Clamping... these) {
    return new RunoutPlan(stations, List.of(these), positions, turns, repeatFirst, swingOnly);
  }

  /** Taken out, cleaned and clamped anew {@code times} times, marks always in line. */
  public RunoutPlan clampedTimes(int times) {
    List<Clamping> same = IntStream.range(0, times).mapToObj(i -> Clamping.AS_MARKED).toList();
    return new RunoutPlan(stations, same, positions, turns, repeatFirst, swingOnly);
  }

  public RunoutPlan repeatingFirst() {
    return new RunoutPlan(stations, clampings, positions, turns, true, swingOnly);
  }

  public RunoutPlan forTurns(int count) {
    return new RunoutPlan(stations, clampings, positions, count, repeatFirst, swingOnly);
  }

  public RunoutPlan swingsOnly() {
    return new RunoutPlan(stations, clampings, positions, turns, repeatFirst, true);
  }

  /** The angle of reading {@code i} as it is meant to be [rad]. */
  double angle(int i) {
    return 2 * Math.PI * i / positions;
  }

  int readings() {
    return positions * turns + (repeatFirst ? 1 : 0);
  }
}
