package rundlauf.cutting.prediction;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rundlauf.quantity.Figure;

/**
 * The figures of a cut.
 *
 * @param teeth what each tooth takes, in their order
 * @param byPath every other figure by its path in the output, such as {@code force.peak.lateral},
 *     in their order
 */
public record CutFigures(List<ToothFigures> teeth, Map<String, Figure> byPath) {
  /**
   * What one tooth takes.
   *
   * @param tooth from 1
   * @param peak thickest chip [m]
   * @param share of the removed material, 0 to 1
   */
  public record ToothFigures(int tooth, Figure peak, Figure share) {}

  public CutFigures {
    teeth = List.copyOf(teeth);
    byPath = Collections.unmodifiableMap(new LinkedHashMap<>(byPath));
  }

  /** The figure at a path that there is. */
  public Figure at(String path) {
    Figure figure = byPath.get(path);
    if (figure == null) {
      throw new IllegalArgumentException("no figure " + path);
    }
    return figure;
  }
}
