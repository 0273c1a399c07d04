package rundlauf.store;

import com.zaxxer.hikari.HikariDataSource;
import com.zaxxer.hikari.pool.HikariPool.PoolInitializationException;
import java.io.UncheckedIOException;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.flywaydb.core.api.FlywayException;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;
import rundlauf.usecase.AttachmentStore;
import rundlauf.usecase.BenchStore;
import rundlauf.usecase.FigureCache;

/** An open store; whoever opened it closes it. */
public final class Store implements AutoCloseable {
  /** The migrations of this version. */
  static final String MIGRATIONS = "rundlauf/store";

  private static final DateTimeFormatter STAMP =
      DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmssSSS", Locale.ROOT).withZone(ZoneOffset.UTC);

  private final Database database;
  private final HikariDataSource source;
  private final Jdbi jdbi;
  private final Migrations migrations;
  private final InstantSource clock;

  private Store(
      Database database, HikariDataSource source, List<String> folders, InstantSource clock) {
    this.database = database;
    this.source = source;
    this.jdbi = Jdbi.create(source);
    this.migrations = new Migrations(database, source, folders);
    this.clock = clock;
  }

  /**
   * Opens a store, made new where there is none. One of an older version is copied beside itself
   * and then migrated.
   *
   * @param address a file, or {@code jdbc:postgresql://…}
   * @param clock what time it is
   * @throws Refused when it cannot be opened, or a newer version has written it
   */
  public static Store open(String address, InstantSource clock) {
    return open(Database.at(address), List.of(MIGRATIONS), clock);
  }

  static Store open(Database database, List<String> folders, InstantSource clock) {
    var watch = new DiskWatch();
    try {
      return migrated(database, database.open(watch), folders, clock);
    } catch (PoolInitializationException | FlywayException | JdbiException e) {
      throw DiskTrouble.refusal(database, "store-not-opened", disk(watch, e));
    }
  }

  private static Exception disk(DiskWatch watch, Exception thrown) {
    return watch.first().isPresent() ? watch.first().get() : thrown;
  }

  private static Store migrated(
      Database database, HikariDataSource source, List<String> folders, InstantSource clock) {
    boolean open = false;
    try {
      var store = new Store(database, source, folders, clock);
      store.migrations.run(store::backUp);
      open = true;
      return store;
    } finally {
      if (!open) {
        source.close();
      }
    }
  }

  /** Its address, without secrets. */
  public String address() {
    return database.shown();
  }

  /** Benches, trials and readings. */
  public BenchStore benches() {
    return new SqlBenchStore(sql(), this::backUp);
  }

  /** Recordings and photos. */
  public AttachmentStore attachments() {
    return new SqlAttachments(sql());
  }

  /** Figures that were worked out before. */
  public FigureCache figures() {
    return new SqlFigures(sql());
  }

  private Sql sql() {
    return new Sql(jdbi, database, clock);
  }

  /** Now, as a part of a copy's name. */
  static String stamp(InstantSource clock) {
    return STAMP.format(clock.instant());
  }

  private String backUp() {
    String label = "v" + migrations.version() + "." + stamp(clock);
    try {
      return database.backUp(jdbi, label);
    } catch (JdbiException | UncheckedIOException e) {
      throw Refused.at(Place.of(database.shown()), "store-not-backed-up", Arg.of(Words.of(e)));
    }
  }

  @Override
  public void close() {
    try {
      database.beforeClose(jdbi);
    } catch (JdbiException e) {
      throw Refused.at(Place.of(database.shown()), "store-not-closed", Arg.of(Words.of(e)));
    } finally {
      source.close();
    }
  }
}
