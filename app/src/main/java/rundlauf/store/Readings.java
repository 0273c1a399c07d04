package rundlauf.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;
import rundlauf.usecase.Kept.Reading;
import rundlauf.usecase.Kept.Strike;
import rundlauf.usecase.TypedReading;
import rundlauf.usecase.TypedReading.Cell;

/** The tables of readings, their cells and what strikes them out. */
final class Readings {
  private static final String ALL =
      "SELECT r.position, r.key, r.at, c.column_name, c.text, s.reason, s.at AS struck_at"
          + " FROM reading r"
          + " JOIN reading_cell c ON c.trial = r.trial AND c.position = r.position"
          + " LEFT JOIN strike s ON s.trial = r.trial AND s.position = r.position"
          + " WHERE r.trial = :trial";

  private Readings() {}

  static List<Reading> all(Handle handle, long trial) {
    return grouped(
        handle
            .createQuery(ALL + " ORDER BY r.position, c.place")
            .bind("trial", trial)
            .map((row, context) -> cell(row))
            .list());
  }

  static Optional<Reading> find(Handle handle, long trial, String key) {
    return grouped(
            handle
                .createQuery(ALL + " AND r.key = :key ORDER BY c.place")
                .bind("trial", trial)
                .bind("key", key)
                .map((row, context) -> cell(row))
                .list())
        .stream()
        .findFirst();
  }

  /** Adds a reading behind the last one. The trial's row must be held. */
  static Reading add(Handle handle, long trial, TypedReading typed, Instant now) {
    int position =
        handle
            .createQuery("SELECT coalesce(max(position), 0) + 1 FROM reading WHERE trial = :trial")
            .bind("trial", trial)
            .mapTo(Integer.class)
            .one();
    handle.execute(
        "INSERT INTO reading (trial, position, key, at) VALUES (?, ?, ?, ?)",
        trial,
        position,
        typed.key(),
        now.toString());
    addCells(handle, trial, position, typed.cells());
    return new Reading(position, typed, now, Optional.empty());
  }

  private static void addCells(Handle handle, long trial, int position, List<Cell> cells) {
    PreparedBatch batch =
        handle.prepareBatch(
            "INSERT INTO reading_cell (trial, position, place, column_name, text)"
                + " VALUES (?, ?, ?, ?, ?)");
    for (int place = 0; place < cells.size(); place++) {
      batch.add(trial, position, place + 1, cells.get(place).column(), cells.get(place).text());
    }
    batch.execute();
  }

  static Strike strike(Handle handle, long trial, int position, String reason, Instant now) {
    handle.execute(
        "INSERT INTO strike (trial, position, reason, at) VALUES (?, ?, ?, ?)",
        trial,
        position,
        reason,
        now.toString());
    return new Strike(reason, now);
  }

  /** One cell, with the reading it is of; that has no other cells yet. */
  private static Reading cell(ResultSet row) throws SQLException {
    String reason = row.getString("reason");
    Optional<Strike> struck =
        reason == null
            ? Optional.empty()
            : Optional.of(new Strike(reason, Instant.parse(row.getString("struck_at"))));
    var cell = new Cell(row.getString("column_name"), row.getString("text"));
    return new Reading(
        row.getInt("position"),
        new TypedReading(row.getString("key"), List.of(cell)),
        Instant.parse(row.getString("at")),
        struck);
  }

  private static List<Reading> grouped(List<Reading> cells) {
    Map<Integer, List<Reading>> byPosition = new LinkedHashMap<>();
    cells.forEach(
        cell -> byPosition.computeIfAbsent(cell.position(), p -> new ArrayList<>()).add(cell));
    return byPosition.values().stream().map(Readings::joined).toList();
  }

  private static Reading joined(List<Reading> cells) {
    Reading first = cells.get(0);
    List<Cell> all = cells.stream().flatMap(c -> c.typed().cells().stream()).toList();
    return new Reading(
        first.position(), new TypedReading(first.typed().key(), all), first.at(), first.struck());
  }
}
