package rundlauf.store;

import java.sql.SQLException;
import java.util.Optional;
import org.sqlite.SQLiteException;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;

/** What a database would not do, in a sentence; a full disk and a failing one have their own. */
final class DiskTrouble {
  // source: PostgreSQL, Appendix A, error codes: 53100 disk_full, 58030 io_error
  private static final String POSTGRES_FULL = "53100";
  private static final String POSTGRES_FAILED = "58030";

  private DiskTrouble() {}

  /**
   * The refusal for what a database said.
   *
   * @param otherwise the code where it is not its disk
   */
  static Refused refusal(Database database, String otherwise, Throwable said) {
    String code = code(said).orElse(otherwise);
    return Refused.at(Place.of(database.shown()), code, Arg.of(Words.of(said)));
  }

  /** The code of a full or a failing disk; empty for everything else. */
  static Optional<String> code(Throwable said) {
    for (Throwable e = said; e != null; e = e.getCause()) {
      if (e instanceof SQLException sql) {
        String kind = kind(sql);
        if (kind.equals("SQLITE_FULL") || kind.equals(POSTGRES_FULL)) {
          return Optional.of("store-disk-full");
        }
        if (kind.startsWith("SQLITE_IOERR") || kind.equals(POSTGRES_FAILED)) {
          return Optional.of("store-disk-failed");
        }
      }
    }
    return Optional.empty();
  }

  private static String kind(SQLException e) {
    return e instanceof SQLiteException sqlite
        ? sqlite.getResultCode().name()
        : String.valueOf(e.getSQLState());
  }
}
