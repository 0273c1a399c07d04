package rundlauf.store;

import java.time.Instant;
import java.time.InstantSource;
import java.time.temporal.ChronoUnit;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;
import rundlauf.usecase.TrialName;

/** Runs statements, and says what a database would not do. */
final class Sql {
  private final Jdbi jdbi;
  private final Database database;
  private final InstantSource clock;

  Sql(Jdbi jdbi, Database database, InstantSource clock) {
    this.jdbi = jdbi;
    this.database = database;
    this.clock = clock;
  }

  /** Answers from what is committed. */
  <T> T read(Function<Handle, T> query) {
    try {
      return jdbi.withHandle(query::apply);
    } catch (JdbiException e) {
      throw DiskTrouble.refusal(database, "store-not-read", e);
    }
  }

  /**
   * Answers after the commit: all of it is kept. Where it throws, none of it is; only where the
   * disk failed while it was waited for, and the program then died, may it be there after all.
   */
  <T> T write(Function<Handle, T> change) {
    try {
      return jdbi.inTransaction(change::apply);
    } catch (JdbiException e) {
      throw DiskTrouble.refusal(database, "store-not-written", e);
    }
  }

  Place place() {
    return Place.of(database.shown());
  }

  /** Now, as it is written down. */
  Instant now() {
    return clock.instant().truncatedTo(ChronoUnit.MILLIS);
  }

  /** The row of a trial, held until the transaction ends: its readings come one after another. */
  long hold(Handle handle, TrialName trial) {
    return handle
        .createQuery(
            "SELECT id FROM trial WHERE name = :trial"
                + " AND bench = (SELECT id FROM bench WHERE name = :bench)"
                + database.held())
        .bind("trial", trial.trial())
        .bind("bench", trial.bench())
        .mapTo(Long.class)
        .findOne()
        .orElseThrow(
            () ->
                Refused.at(
                    place(), "trial-not-kept", Arg.typed(trial.trial()), Arg.typed(trial.bench())));
  }

  /** The row of a bench, held likewise. */
  long hold(Handle handle, String bench) {
    return handle
        .createQuery("SELECT id FROM bench WHERE name = :bench" + database.held())
        .bind("bench", bench)
        .mapTo(Long.class)
        .findOne()
        .orElseThrow(() -> Refused.at(place(), "bench-not-kept", Arg.typed(bench)));
  }
}
