package rundlauf.store;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.jdbi.v3.core.Handle;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;
import rundlauf.usecase.BenchStore;
import rundlauf.usecase.Kept.Edition;
import rundlauf.usecase.Kept.Reading;
import rundlauf.usecase.Kept.Strike;
import rundlauf.usecase.TrialName;
import rundlauf.usecase.TypedReading;

/** Benches, trials and readings in tables. Any number of threads may use it at a time. */
final class SqlBenchStore implements BenchStore {
  private final Sql sql;
  private final Supplier<String> backUp;

  SqlBenchStore(Sql sql, Supplier<String> backUp) {
    this.sql = sql;
    this.backUp = backUp;
  }

  @Override
  public List<String> benches() {
    return sql.read(h -> names(h, "SELECT name FROM bench ORDER BY id"));
  }

  @Override
  public Edition keepBench(String bench, String document) {
    Texts.requireName("bench", bench);
    Texts.require("document", document, Texts.DOCUMENT);
    return sql.write(
        h -> {
          h.execute(
              "INSERT INTO bench (name, at) VALUES (?, ?) ON CONFLICT DO NOTHING",
              bench,
              sql.now().toString());
          return Editions.BENCH.add(h, sql.hold(h, bench), document, sql.now());
        });
  }

  @Override
  public Optional<Edition> bench(String bench) {
    return sql.read(
        h ->
            id(h, "SELECT id FROM bench WHERE name = ?", bench)
                .flatMap(id -> Editions.BENCH.all(h, id).stream().reduce((a, b) -> b)));
  }

  @Override
  public List<Edition> benchEditions(String bench) {
    return sql.read(
        h ->
            id(h, "SELECT id FROM bench WHERE name = ?", bench)
                .map(id -> Editions.BENCH.all(h, id))
                .orElseGet(List::of));
  }

  @Override
  public List<String> trials(String bench) {
    String query =
        "SELECT t.name FROM trial t JOIN bench b ON b.id = t.bench WHERE b.name = ? ORDER BY t.id";
    return sql.read(h -> names(h, query, bench));
  }

  @Override
  public Edition keepTrial(TrialName trial, String document) {
    Texts.requireName("trial", trial.trial());
    Texts.require("document", document, Texts.DOCUMENT);
    return sql.write(
        h -> {
          h.execute(
              "INSERT INTO trial (bench, name, at) VALUES (?, ?, ?) ON CONFLICT DO NOTHING",
              sql.hold(h, trial.bench()),
              trial.trial(),
              sql.now().toString());
          return Editions.TRIAL.add(h, sql.hold(h, trial), document, sql.now());
        });
  }

  @Override
  public List<Edition> editions(TrialName trial) {
    return sql.read(h -> id(h, trial).map(id -> Editions.TRIAL.all(h, id)).orElseGet(List::of));
  }

  @Override
  public Reading append(TrialName trial, TypedReading reading) {
    requireReading(reading);
    return sql.write(
        h -> {
          long id = sql.hold(h, trial);
          return Readings.find(h, id, reading.key())
              .map(kept -> same(kept, reading))
              .orElseGet(() -> Readings.add(h, id, reading, sql.now()));
        });
  }

  private Reading same(Reading kept, TypedReading again) {
    if (!kept.typed().equals(again)) {
      throw Refused.at(
          sql.place(), "reading-key-taken", Arg.typed(again.key()), Arg.of(kept.position()));
    }
    return kept;
  }

  private static void requireReading(TypedReading reading) {
    Texts.requireName("key", reading.key());
    int cells = reading.cells().size();
    if (cells == 0 || cells > Texts.CELLS) {
      throw Refused.at(Place.NOWHERE, "reading-cells", Arg.of(cells), Arg.of(Texts.CELLS));
    }
    List<String> seen = new ArrayList<>();
    for (TypedReading.Cell cell : reading.cells()) {
      Texts.requireName("column", cell.column());
      Texts.require(cell.column(), cell.text(), Texts.CELL);
      if (seen.contains(cell.column())) {
        throw Refused.at(Place.NOWHERE.field(cell.column()), "reading-column-twice");
      }
      seen.add(cell.column());
    }
  }

  @Override
  public Strike strike(TrialName trial, String key, String reason) {
    Texts.requireName("reason", reason);
    return sql.write(
        h -> {
          long id = sql.hold(h, trial);
          Reading kept =
              Readings.find(h, id, key)
                  .orElseThrow(() -> Refused.at(sql.place(), "reading-not-kept", Arg.typed(key)));
          return kept.struck()
              .map(struck -> same(struck, reason))
              .orElseGet(() -> Readings.strike(h, id, kept.position(), reason, sql.now()));
        });
  }

  private Strike same(Strike kept, String reason) {
    if (!kept.reason().equals(reason)) {
      throw Refused.at(sql.place(), "reading-struck-already", Arg.typed(kept.reason()));
    }
    return kept;
  }

  @Override
  public List<Reading> readings(TrialName trial) {
    return sql.read(h -> id(h, trial).map(id -> Readings.all(h, id)).orElseGet(List::of));
  }

  @Override
  public String backUp() {
    return backUp.get();
  }

  private static Optional<Long> id(Handle handle, TrialName trial) {
    String query =
        "SELECT t.id FROM trial t JOIN bench b ON b.id = t.bench WHERE b.name = ? AND t.name = ?";
    return id(handle, query, trial.bench(), trial.trial());
  }

  private static Optional<Long> id(Handle handle, String query, Object... names) {
    return handle.select(query, names).mapTo(Long.class).findOne();
  }

  private static List<String> names(Handle handle, String query, Object... of) {
    return handle.select(query, of).mapTo(String.class).list();
  }
}
