package rundlauf.readings;

import java.util.List;
import java.util.Optional;
import rundlauf.bench.Bench;
import rundlauf.bench.Spindle;
import rundlauf.bench.Trial;
import rundlauf.quantity.Dimension;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Refused;
import rundlauf.quantity.Unit;

/** Understands a side-load trial. */
public final class LoadReader {
  static final Column READING = Column.shown("reading");

  private static final List<Column> COLUMNS =
      List.of(
          READING,
          Column.of("load", Dimension.FORCE, Unit.NEWTON),
          Column.of("mass", Dimension.MASS, Unit.GRAM),
          Column.bare("count"),
          Column.bare("place"),
          Column.of("at", Dimension.LENGTH, Unit.MILLIMETRE),
          Column.of("contact", Dimension.LENGTH, Unit.MILLIMETRE),
          Column.of("direction", Dimension.ANGLE, Unit.DEGREE),
          Column.of("dial", Dimension.ANGLE, Unit.DEGREE),
          Column.bare("branch"),
          Column.bare("zeroed"));

  private LoadReader() {}

  /**
   * A side-load trial in SI, corrected by the cosine of the indicator's angle, struck rows left
   * out.
   *
   * @param trial as typed
   * @param bench that defines the names the trial uses; empty when it was read alone
   * @return the points in the order taken, forces as stated; what all of them share of the force's
   *     doubt is in {@code forceScale}
   * @throws Refused for whatever is not as it should be, and when no two readings on one setting of
   *     the dial differ in load
   */
  public static LoadReadings read(Trial trial, Optional<Bench> bench) {
    PushedTrial pushed = PushedTrial.of(trial, bench, TrialKind.SIDE_LOAD, COLUMNS);
    Optional<Quantity> contact = pushed.around().contact();
    var pushing = new SidePushing(pushed.columns(), pushed.force());
    var distances = LoadDistances.of(contact, pushed.points(pushing), trial.name());
    return pushed.with(distances.trial(), nose(pushed.head(), bench), distances.points());
  }

  private static Optional<LoadReadings.Nose> nose(TrialHead head, Optional<Bench> bench) {
    return bench
        .flatMap(b -> head.setup().flatMap(b::setup).flatMap(setup -> b.spindle(setup.spindle())))
        .flatMap(
            spindle ->
                spindle
                    .nose()
                    .flatMap(Spindle.Nose::toMount)
                    .map(to -> new LoadReadings.Nose(spindle.name(), to)));
  }
}
