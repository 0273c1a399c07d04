package rundlauf.readings;

import java.util.List;
import java.util.Optional;
import rundlauf.bench.Bench;
import rundlauf.bench.Trial;
import rundlauf.quantity.Dimension;
import rundlauf.quantity.Refused;
import rundlauf.quantity.Unit;

/** Understands an axial trial: the nose pushed toward its housing and pulled away from it. */
public final class AxialReader {
  /** The words for toward the housing, and for away from it. */
  public static final List<String> DIRECTIONS = List.of("push", "pull");

  private static final List<Column> COLUMNS =
      List.of(
          LoadReader.READING,
          Column.of("load", Dimension.FORCE, Unit.NEWTON),
          Column.of("mass", Dimension.MASS, Unit.GRAM),
          Column.bare("count"),
          Column.bare("place"),
          Column.of("at", Dimension.LENGTH, Unit.MILLIMETRE),
          AxialPushing.column("direction"),
          AxialPushing.column("dial"),
          Column.bare("branch"),
          Column.bare("zeroed"));

  private AxialReader() {}

  /**
   * An axial trial in SI, corrected by the cosine of the indicator's angle, struck rows left out.
   *
   * @param trial as typed
   * @param bench that defines the names the trial uses; empty when it was read alone
   * @return the points in the order taken, their directions measured from the push toward the
   *     housing: 0 for a push, half a turn for a pull; forces as stated, what all of them share of
   *     the force's doubt is in {@code forceScale}
   * @throws Refused for whatever is not as it should be, and when no two readings on one setting of
   *     the dial differ in load
   */
  public static LoadReadings read(Trial trial, Optional<Bench> bench) {
    PushedTrial pushed = PushedTrial.of(trial, bench, TrialKind.AXIAL, COLUMNS);
    var pushing = new AxialPushing(pushed.columns(), pushed.force());
    List<LoadReadings.Point> points = pushed.points(pushing);
    return pushed.with(pushed.around().contact(), Optional.empty(), points);
  }
}
