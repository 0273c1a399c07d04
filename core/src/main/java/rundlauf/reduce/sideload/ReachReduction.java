package rundlauf.reduce.sideload;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rundlauf.maths.Draws;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Figure;
import rundlauf.quantity.Saying;
import rundlauf.quantity.Unit;
import rundlauf.readings.LoadReadings;
import rundlauf.reduce.sideload.Compliances.Reach;

/**
 * The stiffness at other distances: measured, where lines at several distances of load or dial tell
 * how the nose tips; else about a pivot that is assumed.
 *
 * @param distances load and dial together at other distances
 * @param noses at the trial's own distance, were the nose longer or shorter
 * @param sayings why there is none, or how they were had; of the distances first
 */
record ReachReduction(List<Reach> distances, List<Reach> noses, List<Saying> sayings) {
  private static final String ABOUT = "reach";

  /**
   * The tables.
   *
   * @param assumed carries about an assumed pivot; empty where that cannot be
   * @param why it cannot be
   */
  static ReachReduction of(
      LoadReadings readings,
      List<Slope> slopes,
      Optional<Reaching> assumed,
      Optional<Saying> why,
      Draws draws) {
    Optional<Tipping> tipping = Tipping.of(readings, slopes, draws);
    List<Reach> about = assumed.map(Reaching::distances).orElse(List.of());
    List<Reach> noses = assumed.map(Reaching::noses).orElse(List.of());
    List<Reach> measured = tipping.map(t -> Reaching.at(t::stiffness)).orElse(List.of());
    boolean use = tipping.filter(t -> t.known() || width(measured) < width(about)).isPresent();
    if (!use) {
      List<Saying> said = assumed.map(Reaching::assumption).or(() -> why).stream().toList();
      return new ReachReduction(about, noses, said);
    }
    List<Saying> said = new ArrayList<>();
    said.add(tipping.get().known() ? told(tipping.get()) : Saying.of("reach-limited", ABOUT));
    assumed.ifPresent(a -> said.add(a.assumptionOfNoses()));
    return new ReachReduction(measured, noses, said);
  }

  private static Saying told(Tipping tipping) {
    List<Arg> distances = tipping.loads().stream().map(x -> Arg.of(x, Unit.MILLIMETRE)).toList();
    return Saying.of(
        "reach-measured",
        ABOUT,
        Arg.of(distances.size()),
        distances.get(0),
        distances.get(distances.size() - 1));
  }

  /** The intervals' widths over their values, summed; without bound where one is missing. */
  private static double width(List<Reach> table) {
    double sum = table.isEmpty() ? Double.POSITIVE_INFINITY : 0;
    for (Reach reach : table) {
      sum +=
          reach
              .stiffness()
              .estimate()
              .map(ReachReduction::relative)
              .orElse(Double.POSITIVE_INFINITY);
    }
    return sum;
  }

  private static double relative(Figure.Estimate e) {
    return (e.interval().high() - e.interval().low()) / e.value();
  }
}
