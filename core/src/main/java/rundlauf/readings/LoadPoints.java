package rundlauf.readings;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rundlauf.bench.Entry;
import rundlauf.bench.Table;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Refused;

/** Reads the rows of a trial that pushes the nose, in the order taken. */
final class LoadPoints {
  private final Columns columns;
  private final DialReader dial;
  private final Pushing pushing;
  private final List<LoadReadings.Point> points = new ArrayList<>();

  private LoadPoints(Columns columns, DialReader dial, Pushing pushing) {
    this.columns = columns;
    this.dial = dial;
    this.pushing = pushing;
  }

  static List<LoadReadings.Point> of(Columns columns, DialReader dial, Pushing pushing) {
    columns.require(LoadReader.READING);
    List<Table.Row> rows = columns.used();
    if (rows.isEmpty()) {
      throw columns.none();
    }
    LoadPoints reader = new LoadPoints(columns, dial, pushing);
    double defaultDial = pushing.said(rows.get(0)).orElse(0.0);
    rows.forEach(row -> reader.add(row, defaultDial));
    if (!reader.showsDifference()) {
      throw Refused.at(rows.get(0).place(), "no-difference-of-load", Arg.of(reader.points.size()));
    }
    return List.copyOf(reader.points);
  }

  private void add(Table.Row row, double defaultDial) {
    Entry.Scalar typed = columns.typed(row, "reading");
    String place = columns.word(row, "place", TouchedBody.BODIES).orElse("shank");
    Optional<Double> at = columns.siIfGiven(row, "at");
    double along = pushing.dial(row).orElse(defaultDial);
    at.ifPresent(x -> refuseMisplaced(row, new TouchedBody(place, x)));
    Pushing.Push push = pushing.push(row);
    Optional<Double> contact = contact(row, push.load());
    points.add(
        new LoadReadings.Point(
            push.load(),
            dial.along(columns.si(row, "reading"), typed, columns.unit("reading")),
            place,
            at,
            push.direction(),
            along,
            branch(row),
            zeroed(row, place, at, along, contact),
            row.place().line(),
            contact));
  }

  /** Of the load; an unloaded row without one goes with the row before. */
  private Optional<Double> contact(Table.Row row, double load) {
    if (columns.cell(row, "contact").isPresent()) {
      return Optional.of(columns.notNegative(row, "contact"));
    }
    return load > 0 || points.isEmpty()
        ? Optional.empty()
        : points.get(points.size() - 1).contact();
  }

  private void refuseMisplaced(Table.Row row, TouchedBody touched) {
    touched.refuseMisplaced(row.place());
    for (LoadReadings.Point p : points) {
      p.at().ifPresent(x -> touched.refuseBeside(new TouchedBody(p.place(), x), row.place()));
    }
  }

  /** As given, else one more with every change of dial, place or distance. */
  private int zeroed(
      Table.Row row, String place, Optional<Double> at, double along, Optional<Double> contact) {
    if (columns.has("zeroed")) {
      return columns.count(row, "zeroed", 0);
    }
    if (points.isEmpty()) {
      return 1;
    }
    LoadReadings.Point last = points.get(points.size() - 1);
    boolean same = last.dial() == along && last.place().equals(place) && last.at().equals(at);
    boolean moved = !last.contact().equals(contact);
    return same && !moved ? last.zeroed() : last.zeroed() + 1;
  }

  private LoadReadings.Branch branch(Table.Row row) {
    return columns
        .word(row, "branch", List.of("up", "down"))
        .map(b -> b.equals("up") ? LoadReadings.Branch.UP : LoadReadings.Branch.DOWN)
        .orElse(LoadReadings.Branch.UNSAID);
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
