package rundlauf.store;

import com.zaxxer.hikari.HikariDataSource;
import com.zaxxer.hikari.pool.HikariPool.PoolInitializationException;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import java.util.Objects;
import org.flywaydb.core.api.FlywayException;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;
import rundlauf.usecase.Kept;

/** A copy of a store, of whatever version, made while others may use it; nothing is migrated. */
public final class StoreCopy {
  private static final String NAME = "rundlauf.";

  private StoreCopy() {}

  /**
   * Makes a copy.
   *
   * @param address of a store that is there
   * @param out the file to write, not there yet, in a folder that is; or such a folder
   * @param clock tells the copy's name in a folder
   * @throws Refused when it is no store in a file, when something lies in {@code out} already, or
   *     when it cannot be written; there is no half of a copy then
   */
  public static Kept.Copy make(String address, String out, InstantSource clock) {
    Database database = Database.at(address);
    if (!(database instanceof SqliteFile source)) {
      throw Refused.at(Place.of(database.shown()), "copy-of-server", Arg.typed(out));
    }
    if (!Files.isRegularFile(path(address))) {
      throw Refused.at(Place.of(address), "store-not-there");
    }
    Path copy = target(out, clock);
    try (HikariDataSource pool = source.open(new DiskWatch())) {
      requireStore(source, pool);
      return new Kept.Copy(source.shown(), copy.toString(), written(Jdbi.create(pool), copy));
    } catch (PoolInitializationException | FlywayException e) {
      throw DiskTrouble.refusal(source, "store-not-opened", e);
    }
  }

  private static void requireStore(SqliteFile source, HikariDataSource pool) {
    if (new Migrations(source, pool, List.of(Store.MIGRATIONS)).version().isEmpty()) {
      throw Refused.at(Place.of(source.shown()), "store-not-there");
    }
  }

  /** Written beside first, so that no half of a copy is ever found under its name. */
  private static long written(Jdbi jdbi, Path copy) {
    try {
      Path part = Files.createTempFile(folder(copy), copy.getFileName() + ".", ".part");
      try {
        SqliteFile.copy(jdbi, part);
        Files.move(part, copy);
      } finally {
        Files.deleteIfExists(part);
      }
      return Files.size(copy);
    } catch (FileAlreadyExistsException meanwhile) {
      throw there(copy);
    } catch (IOException | JdbiException e) {
      throw Refused.at(Place.of(copy.toString()), "copy-not-made", Arg.of(Words.of(e)));
    }
  }

  private static Path target(String out, InstantSource clock) {
    Path asked = path(out);
    Path copy = Files.isDirectory(asked) ? asked.resolve(NAME + Store.stamp(clock) + ".db") : asked;
    if (Files.exists(copy)) {
      throw there(copy);
    }
    if (!Files.isDirectory(folder(copy))) { // made, it would lie on the wrong disk
      throw Refused.at(Place.of(out), "copy-folder-missing");
    }
    return copy;
  }

  private static Refused there(Path copy) {
    return Refused.at(Place.of(copy.toString()), "copy-there");
  }

  private static Path folder(Path file) {
    return Objects.requireNonNull(file.toAbsolutePath().getParent()); // what is no folder has one
  }

  private static Path path(String typed) {
    try {
      return Path.of(typed);
    } catch (InvalidPathException impossible) {
      throw Refused.at(Place.of(typed), "nothing-there");
    }
  }
}
