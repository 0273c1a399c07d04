package rundlauf.readings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rundlauf.bench.Bench;
import rundlauf.bench.Entry;
import rundlauf.bench.Section;
import rundlauf.bench.Section.Bound;
import rundlauf.bench.Table;
import rundlauf.bench.Trial;
import rundlauf.maths.Samples;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Dimension;
import rundlauf.quantity.Refused;
import rundlauf.quantity.Unit;

/** Understands a speed trial. */
public final class SpeedReader {
  private static final Column SETTING =
      new Column("setting", List.of(Unit.PERCENT, Unit.VOLT), "setting_%", true);
  private static final Column SPEED = Column.of("speed", Dimension.FREQUENCY, Unit.RPM);
  private static final Column POWER = Column.of("power", Dimension.POWER, Unit.WATT);

  private SpeedReader() {}

  /**
   * A speed trial: settings as typed, speeds in turns per second, struck rows left out.
   *
   * @param trial as typed
   * @param bench that defines the names the trial uses; empty when it was read alone
   * @return the points in the order taken
   * @throws Refused for whatever is not as it should be
   */
  public static SpeedReadings read(Trial trial, Optional<Bench> bench) {
    Section s = HeadReader.section(trial, TrialKind.SPEED, "wanted");
    TrialHead head = HeadReader.read(trial, s, bench);
    Samples wanted = wanted(s);
    Columns columns = Columns.of(HeadReader.table(trial, s), List.of(SETTING, SPEED, POWER));
    columns.require(SETTING);
    columns.require(SPEED);
    List<Table.Row> rows = columns.used();
    if (rows.isEmpty()) {
      throw columns.none();
    }
    Unit unit = columns.unit("setting");
    List<SpeedReadings.Point> points = new ArrayList<>();
    rows.forEach(row -> points.add(point(columns, unit, row)));
    return new SpeedReadings(head, unit == Unit.ONE ? "" : unit.symbol(), wanted, points);
  }

  private static SpeedReadings.Point point(Columns columns, Unit unit, Table.Row row) {
    Optional<Entry.Scalar> power = columns.cell(row, "power");
    return new SpeedReadings.Point(
        unit.fromSi(columns.notNegative(row, "setting")),
        columns.notNegative(row, "speed"),
        power.isPresent()
            ? OptionalDouble.of(columns.notNegative(row, "power"))
            : OptionalDouble.empty(),
        row.place().line());
  }

  private static Samples wanted(Section s) {
    List<Double> speeds = new ArrayList<>();
    for (Entry entry : s.items("wanted")) {
      Entry.Scalar typed = Section.scalar(entry);
      var speed = Section.quantity(typed, Dimension.FREQUENCY, Bound.POSITIVE);
      if (speed.hasLimits()) {
        throw Refused.at(typed.place(), "limits-not-taken", Arg.typed(typed.text()));
      }
      speeds.add(speed.si());
    }
    return Samples.of(speeds);
  }
}
