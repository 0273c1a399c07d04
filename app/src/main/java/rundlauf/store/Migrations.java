package rundlauf.store;

import java.util.List;
import java.util.stream.Stream;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.MigrationInfo;
import org.flywaydb.core.api.MigrationInfoService;
import org.flywaydb.core.api.MigrationVersion;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;

/** Brings the tables of a store to this version's. */
final class Migrations {
  private final Database database;
  private final Flyway flyway;

  /**
   * @param folders of migrations on the class path; each has one folder a database
   */
  Migrations(Database database, DataSource source, List<String> folders) {
    this.database = database;
    this.flyway =
        Flyway.configure()
            .dataSource(source)
            .locations(
                folders.stream()
                    .map(folder -> "classpath:" + folder + "/" + database.folder())
                    .toArray(String[]::new))
            .defaultSchema(database.schema())
            .createSchemas(true)
            .failOnMissingLocations(true)
            .load();
  }

  /** The version of its tables; empty when it has none yet. */
  String version() {
    MigrationInfo current = flyway.info().current();
    return current == null ? "" : String.valueOf(current.getVersion());
  }

  /**
   * Migrates.
   *
   * @param backUp called before, when there is anything that could be lost
   * @throws Refused when a newer version has written it
   */
  void run(Runnable backUp) {
    MigrationInfoService info = flyway.info();
    refuseNewer(info);
    boolean older = Stream.of(info.applied()).anyMatch(Migrations::hasTables);
    if (older && info.pending().length > 0) {
      backUp.run();
    }
    flyway.migrate();
  }

  private static boolean hasTables(MigrationInfo applied) {
    return applied.getVersion() != null && !applied.getVersion().equals(MigrationVersion.EMPTY);
  }

  private void refuseNewer(MigrationInfoService info) {
    for (MigrationInfo migration : info.applied()) {
      if (migration.getState().name().startsWith("FUTURE")) {
        throw Refused.at(
            Place.of(database.shown()),
            "store-newer",
            Arg.of(String.valueOf(migration.getVersion())));
      }
    }
  }
}
