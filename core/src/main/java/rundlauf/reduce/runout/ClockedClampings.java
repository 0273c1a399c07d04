package rundlauf.reduce.runout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import rundlauf.quantity.DrawnVector;
import rundlauf.reduce.runout.Runout.Station;

/**
 * E at one height in every clamping that was read there, and how the parts stood.
 *
 * @param height [m]; empty when none is given
 * @param numbers of the clampings
 * @param vectors E, one a clamping
 * @param clocks as many
 * @param colletMarked whether the collet's clock angle is given
 * @param shankMarked whether the shank's is
 */
record ClockedClampings(
    OptionalDouble height,
    List<Integer> numbers,
    List<DrawnVector> vectors,
    List<Clock> clocks,
    boolean colletMarked,
    boolean shankMarked) {
  ClockedClampings {
    numbers = List.copyOf(numbers);
    vectors = List.copyOf(vectors);
    clocks = List.copyOf(clocks);
  }

  /**
   * One for each station, in the order first met; sweeps without a vector, and clampings that lack
   * a clock angle which others have, are left out.
   */
  static List<ClockedClampings> byStation(List<Station> stations) {
    Map<OptionalDouble, Map<Integer, Station>> all = new LinkedHashMap<>();
    boolean collet = stations.stream().anyMatch(s -> s.sweep().collet().isPresent());
    boolean shank = stations.stream().anyMatch(s -> s.sweep().shank().isPresent());
    for (Station s : stations) {
      if (s.vector().isPresent() && told(s, collet, shank)) {
        all.computeIfAbsent(s.sweep().station(), z -> new LinkedHashMap<>())
            .putIfAbsent(s.sweep().clamping(), s);
      }
    }
    List<ClockedClampings> clamped = new ArrayList<>();
    all.forEach((z, byClamping) -> clamped.add(of(z, List.copyOf(byClamping.values()))));
    return clamped;
  }

  private static boolean told(Station s, boolean collet, boolean shank) {
    return (!collet || s.sweep().collet().isPresent()) && (!shank || s.sweep().shank().isPresent());
  }

  /**
   * Clampings that lack a clock angle which others have, in rising order: how they stood is
   * unknown.
   */
  static List<Integer> untold(List<Station> stations) {
    boolean collet = stations.stream().anyMatch(s -> s.sweep().collet().isPresent());
    boolean shank = stations.stream().anyMatch(s -> s.sweep().shank().isPresent());
    return stations.stream()
        .filter(s -> s.vector().isPresent() && !told(s, collet, shank))
        .map(s -> s.sweep().clamping())
        .distinct()
        .sorted()
        .toList();
  }

  private static ClockedClampings of(OptionalDouble height, List<Station> read) {
    return new ClockedClampings(
        height,
        read.stream().map(s -> s.sweep().clamping()).toList(),
        read.stream().map(s -> s.vector().orElseThrow()).toList(),
        read.stream()
            .map(s -> new Clock(s.sweep().collet().orElse(0), s.sweep().shank().orElse(0)))
            .toList(),
        read.stream().allMatch(s -> s.sweep().collet().isPresent()),
        read.stream().allMatch(s -> s.sweep().shank().isPresent()));
  }

  /** The one of most clampings, the outermost of several. */
  static ClockedClampings chosen(List<ClockedClampings> stations) {
    ClockedClampings best = stations.get(0);
    for (ClockedClampings one : stations) {
      int more = Integer.compare(one.vectors.size(), best.vectors.size());
      if (more > 0 || more == 0 && one.height.orElse(0) > best.height.orElse(0)) {
        best = one;
      }
    }
    return best;
  }
}
