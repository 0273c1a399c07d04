package rundlauf.store;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import rundlauf.quantity.Arg;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;
import rundlauf.usecase.AttachmentStore;
import rundlauf.usecase.Kept.Attachment;
import rundlauf.usecase.Sha256;
import rundlauf.usecase.TrialName;

/** Recordings and photos in tables: the same content is kept once. */
final class SqlAttachments implements AttachmentStore {
  private final Sql sql;

  SqlAttachments(Sql sql) {
    this.sql = sql;
  }

  @Override
  public Attachment attach(TrialName trial, String name, byte[] content) {
    Texts.requireName("name", name);
    if (content.length > MOST_BYTES) {
      throw Refused.at(Place.NOWHERE.field(name), "attachment-too-large", Arg.of(MOST_BYTES));
    }
    String digest = Sha256.hex(content);
    return sql.write(
        h -> {
          long id = sql.hold(h, trial);
          List<Attachment> all = all(h, id);
          Optional<Attachment> kept = all.stream().filter(a -> a.name().equals(name)).findFirst();
          if (kept.isPresent()) {
            return same(kept.get(), digest);
          }
          h.createUpdate(
                  "INSERT INTO content (digest, bytes) VALUES (:digest, :bytes)"
                      + " ON CONFLICT DO NOTHING")
              .bind("digest", digest)
              .bind("bytes", content)
              .execute();
          return add(
              h, id, all.size() + 1, new Attachment(name, digest, content.length, sql.now()));
        });
  }

  private Attachment same(Attachment kept, String digest) {
    if (!kept.digest().equals(digest)) {
      throw Refused.at(sql.place(), "attachment-name-taken", Arg.typed(kept.name()));
    }
    return kept;
  }

  private static Attachment add(Handle handle, long trial, int place, Attachment file) {
    handle.execute(
        "INSERT INTO attachment (trial, place, name, digest, size, at) VALUES (?, ?, ?, ?, ?, ?)",
        trial,
        place,
        file.name(),
        file.digest(),
        file.size(),
        file.at().toString());
    return file;
  }

  @Override
  public List<Attachment> attachments(TrialName trial) {
    return sql.read(
        h ->
            h.select(
                    "SELECT t.id FROM trial t JOIN bench b ON b.id = t.bench"
                        + " WHERE b.name = ? AND t.name = ?",
                    trial.bench(),
                    trial.trial())
                .mapTo(Long.class)
                .findOne()
                .map(id -> all(h, id))
                .orElseGet(List::of));
  }

  private static List<Attachment> all(Handle handle, long trial) {
    return handle
        .select(
            "SELECT name, digest, size, at FROM attachment WHERE trial = ? ORDER BY place", trial)
        .map(
            (row, context) ->
                new Attachment(
                    row.getString("name"),
                    row.getString("digest"),
                    row.getLong("size"),
                    Instant.parse(row.getString("at"))))
        .list();
  }

  @Override
  public byte[] content(String digest) {
    byte[] bytes =
        sql.read(
            h ->
                h.select("SELECT bytes FROM content WHERE digest = ?", digest)
                    .map((row, context) -> row.getBytes("bytes"))
                    .findOne()
                    .orElseThrow(
                        () -> Refused.at(sql.place(), "attachment-not-kept", Arg.typed(digest))));
    if (!Sha256.hex(bytes).equals(digest)) {
      throw Refused.at(sql.place(), "attachment-damaged", Arg.typed(digest));
    }
    return bytes;
  }
}
