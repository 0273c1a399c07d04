package rundlauf.store;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.concurrent.atomic.AtomicInteger;

/** The databases on which a store must do the same. */
enum Engine {
  SQLITE {
    @Override
    String fresh(Path folder) {
      return folder.resolve("bench.db").toString();
    }
  },
  POSTGRESQL {
    @Override
    String fresh(Path folder) {
      String name = "store_" + COUNT.incrementAndGet();
      try (Connection connection = DriverManager.getConnection(Server.url("postgres"))) {
        connection.createStatement().execute("CREATE DATABASE " + name);
      } catch (SQLException e) {
        throw new IllegalStateException(e);
      }
      return Server.url(name);
    }
  };

  private static final AtomicInteger COUNT = new AtomicInteger();

  /** The address of a store that is not there yet. */
  abstract String fresh(Path folder);

  /** A connection past the store, as another program would have it. */
  Connection raw(String address) throws SQLException {
    if (this == SQLITE) {
      return DriverManager.getConnection("jdbc:sqlite:" + address);
    }
    Connection connection = DriverManager.getConnection(address);
    connection.setSchema("rundlauf");
    return connection;
  }

  /** A real server, started once and stopped with the tests. */
  private static final class Server {
    private static final EmbeddedPostgres POSTGRES = start();

    static String url(String database) {
      return POSTGRES.getJdbcUrl("postgres", database);
    }

    private static EmbeddedPostgres start() {
      try {
        return EmbeddedPostgres.builder()
            .setOverrideWorkingDirectory(new File("target/postgresql").getAbsoluteFile())
            .start();
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }
}
