package rundlauf.store;

import java.util.Optional;
import rundlauf.quantity.Refused;
import rundlauf.usecase.FigureCache;
import rundlauf.usecase.FigureKey;

/** Figures in a table, by the digest of their key. */
final class SqlFigures implements FigureCache {
  private final Sql sql;

  SqlFigures(Sql sql) {
    this.sql = sql;
  }

  @Override
  public Optional<String> find(FigureKey key) {
    return sql.read(
        h ->
            h.select("SELECT document FROM figure WHERE digest = ?", key.digest())
                .mapTo(String.class)
                .findOne());
  }

  /** A full disk keeps no figures, and bars nobody from reading them. */
  @Override
  public void keep(FigureKey key, String document) {
    try {
      sql.write(
          h ->
              h.execute(
                  "INSERT INTO figure (digest, document) VALUES (?, ?) ON CONFLICT DO NOTHING",
                  key.digest(),
                  document));
    } catch (Refused notKept) {
      // worked out anew next time
    }
  }
}
