package rundlauf.store;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import rundlauf.usecase.Kept.Edition;

/** The editions of benches' and of trials' documents: two tables of one shape. */
enum Editions {
  BENCH("bench"),
  TRIAL("trial");

  private final String owner;

  Editions(String owner) {
    this.owner = owner;
  }

  /** The oldest first. */
  List<Edition> all(Handle handle, long id) {
    return handle
        .createQuery(
            "SELECT number, document, at FROM %1$s_edition WHERE %1$s = :id ORDER BY number"
                .replace("%1$s", owner))
        .bind("id", id)
        .map(
            (row, context) ->
                new Edition(
                    row.getInt("number"),
                    row.getString("document"),
                    Instant.parse(row.getString("at"))))
        .list();
  }

  /** Adds an edition, unless the newest has the same text. The owner's row must be held. */
  Edition add(Handle handle, long id, String document, Instant now) {
    List<Edition> all = all(handle, id);
    Optional<Edition> newest =
        all.isEmpty() ? Optional.empty() : Optional.of(all.get(all.size() - 1));
    if (newest.isPresent() && newest.get().document().equals(document)) {
      return newest.get();
    }
    var next = new Edition(all.size() + 1, document, now);
    handle
        .createUpdate(
            "INSERT INTO %1$s_edition (%1$s, number, document, at) VALUES (:id, :number, :document, :at)"
                .replace("%1$s", owner))
        .bind("id", id)
        .bind("number", next.number())
        .bind("document", document)
        .bind("at", now.toString())
        .execute();
    return next;
  }
}
