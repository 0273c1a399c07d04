package rundlauf.readings;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rundlauf.bench.Entry;
import rundlauf.bench.Nearest;
import rundlauf.bench.Table;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Refused;
import rundlauf.quantity.Unit;

/** Reads the rows of a side-load trial, in the order taken. */
final class LoadPoints {
  private static final List<String> PLACES =
      List.of("shank", "nut", "housing", "mount", "carriage", "table");

  private final Columns columns;
  private final DialReader dial;
  private final ForceReader force;
  private final List<LoadReadings.Point> points = new ArrayList<>();

  private LoadPoints(Columns columns, DialReader dial, ForceReader force) {
    this.columns = columns;
    this.dial = dial;
    this.force = force;
  }

  static List<LoadReadings.Point> of(Columns columns, DialReader dial, ForceReader force) {
    columns.require(LoadReader.READING);
    List<Table.Row> rows = columns.used();
    if (rows.isEmpty()) {
      throw columns.none();
    }
    LoadPoints reader = new LoadPoints(columns, dial, force);
    double defaultDial = reader.angle(rows.get(0), "direction").orElse(0.0);
    rows.forEach(row -> reader.add(row, defaultDial));
    if (!reader.showsDifference()) {
      throw Refused.at(rows.get(0).place(), "no-difference-of-load", Arg.of(reader.points.size()));
    }
    return List.copyOf(reader.points);
  }

  private void add(Table.Row row, double defaultDial) {
    Entry.Scalar typed = columns.typed(row, "reading");
    String place = word(row, "place", PLACES).orElse("shank");
    Optional<Double> at = columns.siIfGiven(row, "at");
    double along = angle(row, "dial").orElse(defaultDial);
    at.ifPresent(x -> refuseTwoBodies(row, place, x));
    double load = force.newtons(columns, row);
    if (load > 0 && columns.has("direction") && angle(row, "direction").isEmpty()) {
      throw Refused.at(row.place(), "direction-missing");
    }
    points.add(
        new LoadReadings.Point(
            load,
            dial.along(columns.si(row, "reading"), typed, columns.unit("reading")),
            place,
            at,
            angle(row, "direction").orElse(0.0),
            along,
            branch(row),
            zeroed(row, place, at, along),
            row.place().line()));
  }

  /** One distance lies on one body; at the nut's face two of them meet. */
  private void refuseTwoBodies(Table.Row row, String place, double at) {
    if (at == 0) {
      return;
    }
    for (LoadReadings.Point p : points) {
      if (p.at().filter(x -> x == at).isPresent() && !p.place().equals(place)) {
        Arg where = Arg.of(at, Unit.MILLIMETRE);
        throw Refused.at(row.place(), "two-bodies-at", Arg.of(p.place()), Arg.of(place), where);
      }
    }
  }

  /** As given, else one more with every change of dial, place or distance. */
  private int zeroed(Table.Row row, String place, Optional<Double> at, double along) {
    if (columns.has("zeroed")) {
      return columns.count(row, "zeroed", 0);
    }
    if (points.isEmpty()) {
      return 1;
    }
    LoadReadings.Point last = points.get(points.size() - 1);
    boolean same = last.dial() == along && last.place().equals(place) && last.at().equals(at);
    return same ? last.zeroed() : last.zeroed() + 1;
  }

  private LoadReadings.Branch branch(Table.Row row) {
    return word(row, "branch", List.of("up", "down"))
        .map(b -> b.equals("up") ? LoadReadings.Branch.UP : LoadReadings.Branch.DOWN)
        .orElse(LoadReadings.Branch.UNSAID);
  }

  private Optional<Double> angle(Table.Row row, String column) {
    return columns.siIfGiven(row, column);
  }

  private Optional<String> word(Table.Row row, String column, List<String> accepted) {
    Optional<Entry.Scalar> cell = columns.cell(row, column);
    Optional<String> word = cell.map(c -> c.text().strip());
    if (word.isPresent() && !accepted.contains(word.get())) {
      Arg nearest = Arg.list(Nearest.first(word.get(), accepted));
      throw Refused.at(cell.orElseThrow().place(), "word-unknown", Arg.typed(word.get()), nearest);
    }
    return word;
  }

  /** Whether any two readings on one setting of the dial differ in the push. */
  private boolean showsDifference() {
    Map<Integer, LoadReadings.Point> first = new LinkedHashMap<>();
    for (LoadReadings.Point p : points) {
      LoadReadings.Point f = first.putIfAbsent(p.zeroed(), p);
      boolean turned = f != null && f.direction() != p.direction() && p.load() > 0;
      if (f != null && (f.load() != p.load() || turned)) {
        return true;
      }
    }
    return false;
  }
}
