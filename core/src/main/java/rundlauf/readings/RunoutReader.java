package rundlauf.readings;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rundlauf.bench.Bench;
import rundlauf.bench.Entry;
import rundlauf.bench.Section;
import rundlauf.bench.Section.Bound;
import rundlauf.bench.Trial;
import rundlauf.quantity.Dimension;
import rundlauf.quantity.Quantity;
import rundlauf.quantity.Refused;
import rundlauf.quantity.Unit;

/** Understands a runout trial. */
public final class RunoutReader {
  /** How well angles are set when nothing is said: ± 3 deg; our choice, a mark set by eye. */
  private static final double ANGLE_LIMIT = Unit.DEGREE.toSi(3);

  static final Column ANGLE = Column.of("angle", Dimension.ANGLE, Unit.DEGREE);
  static final Column READING = Column.shown("reading");
  static final Column SWING = Column.shown("swing");

  private static final List<Column> COLUMNS =
      List.of(
          ANGLE,
          READING,
          SWING,
          Column.of("station", Dimension.LENGTH, Unit.MILLIMETRE),
          Column.bare("clamping"),
          Column.bare("turn"),
          Column.of("collet", Dimension.ANGLE, Unit.DEGREE),
          Column.of("shank", Dimension.ANGLE, Unit.DEGREE));

  private RunoutReader() {}

  /**
   * A runout trial in SI, corrected by the cosine of the indicator's angle, struck rows left out.
   *
   * @param trial as typed
   * @param bench that defines the names the trial uses; empty when it was read alone
   * @return the readings by sweep, in the order first met
   * @throws Refused for whatever is not as it should be, and for sweeps with too few readings to
   *     tell a circle
   */
  public static RunoutReadings read(Trial trial, Optional<Bench> bench) {
    Section s = section(trial);
    TrialHead head = HeadReader.read(trial, s, bench);
    DialReader dial = DialReader.read(trial.name(), s, bench);
    Optional<Section> gauge = s.section("gauge", "diameter", "tip");
    Optional<Quantity> diameter =
        gauge.flatMap(g -> g.quantity("diameter", Dimension.LENGTH, Bound.POSITIVE));
    Optional<Quantity> tip =
        gauge.flatMap(g -> g.quantity("tip", Dimension.LENGTH, Bound.POSITIVE));
    double angleLimit = angleLimit(s);
    Columns columns = Columns.of(HeadReader.table(trial, s), COLUMNS);
    return new RunoutReadings(
        head,
        dial.limits(),
        diameter.isPresent() ? OptionalDouble.of(diameter.get().si()) : OptionalDouble.empty(),
        tip,
        angleLimit,
        RunoutSweeps.of(columns, dial));
  }

  private static Section section(Trial trial) {
    return HeadReader.section(trial, TrialKind.RUNOUT, "gauge", "indicator", "angle-limit");
  }

  /**
   * The sweep that is being taken, however few its readings are.
   *
   * @param trial as typed
   * @param bench that defines the names the trial uses
   * @return the readings of the sweep that the last row belongs to [rad, m], corrected by the
   *     cosine of the indicator's angle, struck rows left out; empty where there are none
   * @throws Refused for whatever is not as it should be in its rows, columns and indicator
   */
  public static Optional<RunoutReadings.Sweep> begun(Trial trial, Optional<Bench> bench) {
    DialReader dial = DialReader.read(trial.name(), section(trial), bench);
    return trial.readings().flatMap(t -> RunoutSweeps.begun(Columns.of(t, COLUMNS), dial));
  }

  /** {@code 3 deg} and {@code ± 3 deg} say the same. */
  private static double angleLimit(Section s) {
    Entry typed = s.entry("angle-limit").orElse(null);
    if (typed == null) {
      return ANGLE_LIMIT;
    }
    Entry.Scalar limit = Section.scalar(typed);
    String bare = limit.text().strip().replaceFirst("^±", "");
    Entry.Scalar number = new Entry.Scalar(bare, limit.flow(), limit.place());
    Quantity half = Section.quantity(number, Dimension.ANGLE, Bound.NOT_NEGATIVE);
    if (half.hasLimits()) {
      throw Refused.at(limit.place(), "limits-not-taken", s.typed("angle-limit"));
    }
    if (half.si() >= Math.PI) {
      throw Refused.at(limit.place(), "angle-limit-too-large", s.typed("angle-limit"));
    }
    return half.si();
  }
}
