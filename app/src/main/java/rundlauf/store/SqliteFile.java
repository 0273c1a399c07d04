package rundlauf.store;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.jdbi.v3.core.Jdbi;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteConfig.JournalMode;
import org.sqlite.SQLiteConfig.SynchronousMode;
import org.sqlite.SQLiteConfig.TransactionMode;
import org.sqlite.SQLiteDataSource;

/** One file. A single connection, so that whoever writes waits in turn and nobody is starved. */
record SqliteFile(String file, SynchronousMode synchronous) implements Database {
  /** How long another program may hold the file. Our choice. */
  private static final int BUSY_MS = 10_000;

  /** A file whose commits are on the disk when they return. */
  static SqliteFile durable(String file) {
    return new SqliteFile(file, SynchronousMode.FULL);
  }

  @Override
  public HikariDataSource open(DiskWatch watch) {
    var config = new SQLiteConfig();
    config.setJournalMode(JournalMode.WAL);
    config.setSynchronous(synchronous);
    config.setTransactionMode(TransactionMode.IMMEDIATE);
    config.setBusyTimeout(BUSY_MS);
    config.enforceForeignKeys(true);
    config.enableRecursiveTriggers(true); // else REPLACE takes rows away past the triggers
    var source = new SQLiteDataSource(config);
    source.setUrl("jdbc:sqlite:" + file);
    var pool = new HikariConfig();
    pool.setDataSource(source);
    pool.setMaximumPoolSize(1);
    pool.setExceptionOverride(watch);
    return new HikariDataSource(pool);
  }

  @Override
  public String folder() {
    return "sqlite";
  }

  @Override
  public String schema() {
    return "main";
  }

  /** Nothing: only one transaction writes at a time. */
  @Override
  public String held() {
    return "";
  }

  @Override
  public String backUp(Jdbi jdbi, String label) {
    String copy = file + "." + label + ".backup";
    try {
      copy(jdbi, Path.of(copy));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return copy;
  }

  /** Copies everything while others may use it, and waits until the copy is on its disk. */
  static void copy(Jdbi jdbi, Path to) throws IOException {
    jdbi.useHandle(handle -> handle.execute("VACUUM INTO ?", to.toString()));
    try (FileChannel written = FileChannel.open(to, StandardOpenOption.WRITE)) {
      written.force(true);
    }
  }

  /** Everything goes into the one file, so that it can be carried away alone. */
  @Override
  public void beforeClose(Jdbi jdbi) {
    jdbi.useHandle(handle -> handle.execute("PRAGMA wal_checkpoint(TRUNCATE)"));
  }

  @Override
  public String shown() {
    return file;
  }
}
