package rundlauf.store;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.util.List;
import java.util.Locale;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.transaction.TransactionIsolationLevel;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;

/** A database on a server; the tables lie in a schema of their own. */
record PostgresServer(String url) implements Database {
  private static final String SCHEMA = "rundlauf";

  /** Connections at a time. Our choice: a bench has few sheets open. */
  private static final int CONNECTIONS = 8;

  @Override
  public HikariDataSource open(DiskWatch watch) {
    if (url.matches(
        "[^/]*//[^/?]*@.*")) { // the driver would take it for the server's name, and say it
      throw Refused.at(Place.of(shown()), "store-address-secret");
    }
    var pool = new HikariConfig();
    pool.setDriverClassName("org.postgresql.Driver");
    pool.setJdbcUrl(url);
    pool.setSchema(SCHEMA);
    pool.setMaximumPoolSize(CONNECTIONS);
    pool.setConnectionInitSql("SET synchronous_commit TO on"); // whatever the server's default
    pool.setExceptionOverride(watch);
    return new HikariDataSource(pool);
  }

  @Override
  public String folder() {
    return "postgresql";
  }

  @Override
  public String schema() {
    return SCHEMA;
  }

  @Override
  public String held() {
    return " FOR UPDATE";
  }

  /** A copy of every table in a schema beside: against a bad migration, not against a lost disk. */
  @Override
  public String backUp(Jdbi jdbi, String label) {
    String copy = (SCHEMA + "_backup_" + label).toLowerCase(Locale.ROOT).replace('.', '_');
    jdbi.useTransaction(
        TransactionIsolationLevel.REPEATABLE_READ, handle -> copyTables(handle, copy));
    return copy;
  }

  private static void copyTables(Handle handle, String copy) {
    List<String> tables =
        handle
            .createQuery(
                "SELECT table_name FROM information_schema.tables"
                    + " WHERE table_schema = :schema ORDER BY table_name")
            .bind("schema", SCHEMA)
            .mapTo(String.class)
            .list();
    handle.execute("CREATE SCHEMA \"" + copy + "\"");
    for (String table : tables) {
      String name = "\"" + table + "\"";
      handle.execute("CREATE TABLE \"" + copy + "\"." + name + " AS TABLE " + SCHEMA + "." + name);
    }
  }

  @Override
  public void beforeClose(Jdbi jdbi) {
    // the server keeps house itself
  }

  /** Without what may hold a name and a password. */
  @Override
  public String shown() {
    return url.replaceFirst("\\?.*$", "").replaceFirst("//[^/]*@", "//");
  }
}
