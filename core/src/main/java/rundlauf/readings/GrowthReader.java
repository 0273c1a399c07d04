package rundlauf.readings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rundlauf.bench.Bench;
import rundlauf.bench.Entry;
import rundlauf.bench.Section;
import rundlauf.bench.Table;
import rundlauf.bench.Trial;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Dimension;
import rundlauf.quantity.Refused;
import rundlauf.quantity.Unit;

/** Understands a growth trial. */
public final class GrowthReader {
  /** Start, growth and time constant, and one time left to judge them by; our choice. */
  private static final int FEWEST_TIMES = 4;

  private static final Column TIME = Column.of("time", Dimension.TIME, Unit.MINUTE);
  private static final Column TEMPERATURE =
      Column.of("temperature", Dimension.TEMPERATURE, Unit.DEGREE_CELSIUS);

  private GrowthReader() {}

  /**
   * A growth trial in SI, corrected by the cosine of the indicator's angle, struck rows left out.
   *
   * @param trial as typed
   * @param bench that defines the names the trial uses; empty when it was read alone
   * @return the points in the order taken
   * @throws Refused for whatever is not as it should be: a time before the one above it, fewer than
   *     four different times
   */
  public static GrowthReadings read(Trial trial, Optional<Bench> bench) {
    Section s = HeadReader.section(trial, TrialKind.GROWTH, "indicator", "reference");
    TrialHead head = HeadReader.read(trial, s, bench);
    DialReader dial = DialReader.read(trial.name(), s, bench);
    Optional<String> reference = s.word("reference", "table", "base", "carriage", "mount");
    Columns columns =
        Columns.of(HeadReader.table(trial, s), List.of(TIME, LoadReader.READING, TEMPERATURE));
    columns.require(TIME);
    columns.require(LoadReader.READING);
    return new GrowthReadings(
        head, dial.limits(), reference, HeadReader.warmUp(s), points(columns, dial));
  }

  private static List<GrowthReadings.Point> points(Columns columns, DialReader dial) {
    List<Table.Row> rows = columns.used();
    if (rows.isEmpty()) {
      throw columns.none();
    }
    List<GrowthReadings.Point> points = new ArrayList<>();
    for (Table.Row row : rows) {
      double time = columns.si(row, "time");
      if (!points.isEmpty() && time < points.get(points.size() - 1).time()) {
        Entry.Scalar cell = columns.typed(row, "time");
        throw Refused.at(cell.place(), "growth-time-falls", Arg.typed(cell.text().strip()));
      }
      points.add(point(columns, dial, row, time));
    }
    long times = points.stream().mapToDouble(GrowthReadings.Point::time).distinct().count();
    if (times < FEWEST_TIMES) {
      throw Refused.at(rows.get(0).place(), "growth-few-times", Arg.of(times));
    }
    return points;
  }

  private static GrowthReadings.Point point(
      Columns columns, DialReader dial, Table.Row row, double time) {
    Entry.Scalar typed = columns.typed(row, "reading");
    Optional<Double> temperature = columns.siIfGiven(row, "temperature");
    return new GrowthReadings.Point(
        time,
        dial.along(columns.si(row, "reading"), typed, columns.unit("reading")),
        temperature.isPresent() ? OptionalDouble.of(temperature.get()) : OptionalDouble.empty(),
        row.place().line());
  }
}
