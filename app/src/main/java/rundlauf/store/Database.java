package rundlauf.store;

import com.zaxxer.hikari.HikariDataSource;
import org.jdbi.v3.core.Jdbi;

/** What differs between the databases. */
sealed interface Database permits SqliteFile, PostgresServer {
  /**
   * Opens its connections.
   *
   * @param watch is told of everything that goes wrong on them
   */
  HikariDataSource open(DiskWatch watch);

  /** The folder of its migrations, beside this package. */
  String folder();

  /** The schema in which its tables lie. */
  String schema();

  /** What ends a query whose row is held until the transaction ends. */
  String held();

  /**
   * Copies everything beside itself.
   *
   * @param label what the copy's name tells it from others by
   * @return where the copy lies
   */
  String backUp(Jdbi jdbi, String label);

  /** What is done before the last connection closes. */
  void beforeClose(Jdbi jdbi);

  /** Its address, without secrets. */
  String shown();

  /**
   * The database at an address.
   *
   * @param address a file, or {@code jdbc:postgresql://…}
   */
  static Database at(String address) {
    return address.startsWith("jdbc:postgresql:")
        ? new PostgresServer(address)
        : SqliteFile.durable(address);
  }
}
