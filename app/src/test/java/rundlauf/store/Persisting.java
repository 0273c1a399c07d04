package rundlauf.store;

import static rundlauf.store.Invented.TRIAL;
import static rundlauf.store.Invented.reading;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.InstantSource;
import java.util.List;
import java.util.function.Supplier;
import org.sqlite.SQLiteConfig.SynchronousMode;
import rundlauf.quantity.Refused;
import rundlauf.render.Sentences;

/**
 * A process of its own that makes a store, enters readings, closes it and lays it aside, round
 * after round, and asks again for whatever was refused, as a sheet does. It prints, each on one
 * line in one write: {@code kept KEY}; {@code refused SENTENCE}; {@code image NUMBER KEY}, a copy
 * of the files as they lay just after a refusal, and what was refused; {@code round NUMBER}.
 */
final class Persisting {
  static final int READINGS = 3;

  /** Tries of one thing; the disk fails now and then only. */
  private static final int TRIES = 8;

  private final Path file;
  private final Path aside;
  private final FileOutputStream out = new FileOutputStream(FileDescriptor.out);
  private int images;

  private Persisting(Path file, Path aside) {
    this.file = file;
    this.aside = aside;
  }

  /** {@code FILE FOLDER ROUNDS}: the store's file, where it is laid aside, how often. */
  public static void main(String[] args) throws IOException {
    var persisting = new Persisting(Path.of(args[0]), Path.of(args[1]));
    for (int round = 0; round < Integer.parseInt(args[2]); round++) {
      persisting.round(round);
    }
  }

  private void round(int number) throws IOException {
    // every other round also writes back into the file while readings come
    String address = number % 2 == 0 ? file.toString() : file + "?wal_autocheckpoint=6";
    var database = new SqliteFile(address, SynchronousMode.FULL);
    List<String> tables = List.of(Store.MIGRATIONS);
    Store store = tried("open", () -> Store.open(database, tables, InstantSource.system()));
    tried("begin", () -> begun(store));
    for (int i = 0; i < READINGS; i++) {
      String key = "k-" + i;
      var reading = reading(key, "45", Integer.toString(i));
      tried(key, () -> store.benches().append(TRIAL, reading));
      say("kept " + key);
    }
    try {
      store.close();
    } catch (Refused refused) {
      refused("close", refused);
    }
    layAside("round-" + number, true);
    say("round " + number);
  }

  private static Store begun(Store store) {
    Invented.begin(store.benches());
    return store;
  }

  private <T> T tried(String what, Supplier<T> work) throws IOException {
    for (int left = TRIES; ; left--) {
      try {
        return work.get();
      } catch (Refused refused) {
        refused(what, refused);
        if (left == 1) {
          throw refused;
        }
      }
    }
  }

  private void refused(String what, Refused refused) throws IOException {
    say("refused " + Sentences.refusal(refused).line());
    layAside("image-" + images, false);
    say("image " + images++ + " " + what);
  }

  /** What a new start finds: the file and its log; what is beside them is made anew. */
  private void layAside(String name, boolean moved) throws IOException {
    for (String end : List.of("", "-wal")) {
      Path from = Path.of(file + end);
      Path to = aside.resolve(name + ".db" + end);
      if (Files.exists(from) && moved) {
        Files.move(from, to);
      } else if (Files.exists(from)) {
        Files.copy(from, to, StandardCopyOption.REPLACE_EXISTING);
      }
    }
    if (moved) {
      Files.deleteIfExists(Path.of(file + "-shm"));
    }
  }

  private void say(String line) throws IOException {
    out.write((line + "\n").getBytes(StandardCharsets.UTF_8));
  }
}
