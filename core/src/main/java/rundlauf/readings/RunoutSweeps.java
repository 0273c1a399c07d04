package rundlauf.readings;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import rundlauf.bench.Entry;
import rundlauf.bench.Table;
import rundlauf.maths.Samples;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Refused;

/** Sorts the rows of a runout trial into sweeps. */
final class RunoutSweeps {
  private static final double TURN = 2 * Math.PI;

  /** Two angles typed in different units or turns are one when they differ by less [rad]. */
  private static final double SAME_ANGLE = 1e-9;

  /** What is the same in all rows of a sweep. */
  private record Key(
      Optional<Double> station, int clamping, Optional<Double> collet, Optional<Double> shank) {}

  private final Columns columns;
  private final DialReader dial;
  private final Map<Integer, Key> clocked = new LinkedHashMap<>();

  private RunoutSweeps(Columns columns, DialReader dial) {
    this.columns = columns;
    this.dial = dial;
  }

  static List<RunoutReadings.Sweep> of(Columns columns, DialReader dial) {
    boolean swing = columns.has("swing");
    if (swing && (columns.has("angle") || columns.has("reading"))) {
      throw Refused.at(columns.place("swing"), "swing-beside-readings");
    }
    if (!swing) {
      columns.require(RunoutReader.ANGLE);
      columns.require(RunoutReader.READING);
    }
    List<Table.Row> rows = columns.used();
    if (rows.isEmpty()) {
      throw columns.none();
    }
    RunoutSweeps sweeps = new RunoutSweeps(columns, dial);
    return swing ? rows.stream().map(sweeps::swing).toList() : sweeps.turned(rows);
  }

  private RunoutReadings.Sweep swing(Table.Row row) {
    Key key = key(row);
    double swing = columns.notNegative(row, "swing");
    Entry.Scalar typed = columns.typed(row, "swing");
    double along = dial.along(swing, typed, columns.unit("swing"));
    return sweep(key, Samples.of(), Samples.of(), OptionalDouble.of(along), row.place().line());
  }

  private List<RunoutReadings.Sweep> turned(List<Table.Row> rows) {
    Map<Key, List<Table.Row>> byKey = new LinkedHashMap<>();
    for (Table.Row row : rows) {
      byKey.computeIfAbsent(key(row), k -> new ArrayList<>()).add(row);
    }
    List<RunoutReadings.Sweep> sweeps = new ArrayList<>();
    byKey.forEach((key, own) -> sweeps.add(turned(key, own)));
    return sweeps;
  }

  /** The readings of the sweep that the last row belongs to, whether it is whole or not. */
  static Optional<RunoutReadings.Sweep> begun(Columns columns, DialReader dial) {
    List<Table.Row> rows = columns.used();
    if (rows.isEmpty() || !columns.has("angle") || !columns.has("reading")) {
      return Optional.empty();
    }
    RunoutSweeps sweeps = new RunoutSweeps(columns, dial);
    Key last = sweeps.key(rows.get(rows.size() - 1));
    List<Table.Row> own = rows.stream().filter(row -> sweeps.key(row).equals(last)).toList();
    return Optional.of(sweeps.read(last, own));
  }

  private RunoutReadings.Sweep turned(Key key, List<Table.Row> rows) {
    RunoutReadings.Sweep sweep = read(key, rows);
    WholeTurn.require(sweep.angle().stream().boxed().toList(), rows.get(0).place());
    return sweep;
  }

  private RunoutReadings.Sweep read(Key key, List<Table.Row> rows) {
    List<Double> angles = new ArrayList<>();
    List<Double> readings = new ArrayList<>();
    for (Table.Row row : rows) {
      Entry.Scalar typed = columns.typed(row, "reading");
      angles.add(angle(row));
      readings.add(dial.along(columns.si(row, "reading"), typed, columns.unit("reading")));
    }
    return sweep(
        key,
        Samples.of(angles),
        Samples.of(readings),
        OptionalDouble.empty(),
        rows.get(0).place().line());
  }

  private static RunoutReadings.Sweep sweep(
      Key key, Samples angles, Samples readings, OptionalDouble swing, int line) {
    return new RunoutReadings.Sweep(
        optional(key.station()),
        key.clamping(),
        optional(key.collet()),
        optional(key.shank()),
        angles,
        readings,
        swing,
        line);
  }

  private static OptionalDouble optional(Optional<Double> value) {
    return value.isPresent() ? OptionalDouble.of(value.get()) : OptionalDouble.empty();
  }

  /** The angle turned, in a later turn with the turns before it. */
  private double angle(Table.Row row) {
    double angle = columns.si(row, "angle");
    if (!columns.has("turn")) {
      return angle;
    }
    int turn = columns.count(row, "turn", 1);
    if (turn > 1 && Math.abs(angle) > TURN + SAME_ANGLE) {
      Entry.Scalar typed = columns.typed(row, "angle");
      throw Refused.at(typed.place(), "angle-over-a-turn", Arg.typed(typed.text()), Arg.of(turn));
    }
    return angle + TURN * (turn - 1);
  }

  private Key key(Table.Row row) {
    Optional<Double> station =
        columns.has("station")
            ? Optional.of(columns.notNegative(row, "station"))
            : Optional.empty();
    int clamping = columns.has("clamping") ? columns.count(row, "clamping", 1) : 1;
    Key key =
        new Key(
            station, clamping, columns.siIfGiven(row, "collet"), columns.siIfGiven(row, "shank"));
    requireSameClocks(row, key);
    return key;
  }

  /** Parts are turned only while the tool is out: within a clamping their angles stay. */
  private void requireSameClocks(Table.Row row, Key key) {
    Key first = clocked.putIfAbsent(key.clamping(), key);
    if (first == null) {
      return;
    }
    requireSame(row, "collet", first.collet(), key);
    requireSame(row, "shank", first.shank(), key);
  }

  private void requireSame(Table.Row row, String part, Optional<Double> first, Key key) {
    Optional<Double> now = part.equals("collet") ? key.collet() : key.shank();
    if (!now.equals(first)) {
      Entry.Scalar typed = columns.typed(row, part);
      if (!columns.has("clamping")) {
        throw Refused.at(
            typed.place(), "clock-without-clamping", Arg.typed(typed.text()), Arg.of(part));
      }
      throw Refused.at(
          typed.place(),
          "clock-changed-in-clamping",
          Arg.typed(typed.text()),
          Arg.of(part),
          Arg.of(key.clamping()));
    }
  }
}
