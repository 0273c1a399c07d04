package rundlauf.simulated;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * How a side-load trial is taken: series of pushes, each series with one setting of the dial's
 * foot.
 *
 * @param counts masses on the lever, in order, within one push; a fall is a smaller count after a
 *     larger
 * @param directions of the pushes, in order [rad]; each runs through all counts
 * @param zeroAnew whether the dial is set anew for each push
 * @param rounds how often the whole is done
 */
public record LoadPlan(
    List<Integer> counts, List<Double> directions, boolean zeroAnew, int rounds) {
  public LoadPlan {
    counts = List.copyOf(counts);
    directions = List.copyOf(directions);
  }

  /** 0, 1, …, {@code most} masses in one direction. */
  public static LoadPlan oneSided(int most) {
    return new LoadPlan(IntStream.rangeClosed(0, most).boxed().toList(), List.of(0.0), false, 1);
  }

  /** The same and back down again. */
  public LoadPlan andBack() {
    List<Integer> all = new ArrayList<>(counts);
    for (int i = counts.size() - 2; i >= 0; i--) {
      all.add(counts.get(i));
    }
    return new LoadPlan(all, directions, zeroAnew, rounds);
  }

  /** Pushed to one side, then to the other, the dial left as it is. */
  public LoadPlan bothWays() {
    return new LoadPlan(counts, List.of(0.0, Math.PI), false, rounds);
  }

  public LoadPlan zeroedForEachPush() {
    return new LoadPlan(counts, directions, true, rounds);
  }

  public LoadPlan times(int count) {
    return new LoadPlan(counts, directions, zeroAnew, count);
  }
}
