package rundlauf.store;

import static org.assertj.core.api.Assertions.assertThat;
import static rundlauf.store.Invented.TRIAL;
import static rundlauf.store.Invented.reading;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rundlauf.usecase.Kept.Reading;
import rundlauf.usecase.TypedReading;

/**
 * Each write, flush and cut of a store's files fails once. Whatever was acknowledged is there once,
 * as typed and in order; nothing else is; and the same process keeps the same reading once the disk
 * takes it. A copy of the files just after each failure stands for a process that died there.
 */
class FaultyDiskTest {
  private static final String WAITING =
      "readings wait on the device where they were typed and are sent again by themselves,"
          + " anything else has to be sent again";
  private static final String FULL =
      ": the disk of the store is full, and this is not kept — make room on it; " + WAITING;
  private static final String FAILED =
      ": the disk of the store failed, and this is not acknowledged as kept: [SQLITE_IOERR_";
  private static final String FAILED_REMEDY =
      " — look after that disk, and copy the store to another one; " + WAITING;
  private static final String NOT_CLOSED =
      ": the store could not be put in order before it was closed: [SQLITE_";

  @TempDir private Path folder;

  /** Sampled: steps that meet the calls of a round at another place in each round. */
  @ParameterizedTest
  @CsvSource({
    "pwrite64, ENOSPC, 1+79, 6",
    "pwrite64, EIO, 92..300+11, 1",
    "fsync, EIO, 1+5, 6",
    "ftruncate, EIO, 1+2, 3"
  })
  void callsThatFailNowAndThenLoseNothing(String call, String error, String when, int rounds)
      throws Exception {
    FaultyDisk disk = FaultyDisk.of(call, error, when, rounds, folder);
    assertThat(disk.refusals()).isGreaterThanOrEqualTo(rounds);
    assertNothingLost(disk, rounds, error);
  }

  @ParameterizedTest
  @CsvSource({"fsync, EIO", "ftruncate, EIO", "pwrite64, ENOSPC", "pwrite64, EIO"})
  @Tag("long")
  void eachCallFailsOnce(String call, String error) throws Exception {
    int failed = 0;
    for (FaultyDisk disk = once(call, error, 1); disk.refusals() > 0; ) {
      failed++;
      assertThat(disk.refusals()).isEqualTo(1);
      assertNothingLost(disk, 2, error);
      disk = once(call, error, failed + 1);
    }
    System.out.printf("%s %s: each of %d calls failed once%n", call, error, failed);
    assertThat(failed).isGreaterThan(2);
  }

  private FaultyDisk once(String call, String error, int number) throws Exception {
    Path own = folder.resolve("call-" + number);
    return FaultyDisk.of(call, error, Integer.toString(number), 2, own);
  }

  private static void assertNothingLost(FaultyDisk disk, int rounds, String error)
      throws Exception {
    List<String> kept = new ArrayList<>();
    int round = 0;
    for (String line : disk.said()) {
      String[] words = line.split(" ");
      switch (words[0]) {
        case "kept" -> kept.add(words[1]);
        case "refused" -> assertPlain(line, error);
        case "image" -> assertImage(disk.folder(), words[1], kept, words[2]);
        case "round" -> {
          assertThat(words[1]).isEqualTo(Integer.toString(round++));
          assertThat(kept).containsExactlyElementsOf(keys(Persisting.READINGS));
          assertThat(readings(disk.folder().resolve("round-" + words[1] + ".db"))).isEqualTo(kept);
          kept.clear();
        }
        default -> throw new IllegalStateException(line);
      }
    }
    assertThat(round).isEqualTo(rounds);
  }

  private static void assertPlain(String line, String error) {
    if (line.contains(NOT_CLOSED)) {
      assertThat(line)
          .endsWith("leave the files beside it (-wal, -shm) where they are and open it again");
    } else if (error.equals("ENOSPC")) {
      assertThat(line).endsWith(FULL);
    } else {
      assertThat(line).contains(FAILED).endsWith(FAILED_REMEDY);
    }
  }

  /** All that was acknowledged, and at most the one that was refused. */
  private static void assertImage(Path folder, String number, List<String> kept, String refused)
      throws Exception {
    List<String> there = readings(folder.resolve("image-" + number + ".db"));
    assertThat(there).hasSizeGreaterThanOrEqualTo(kept.size());
    assertThat(there.subList(0, kept.size())).isEqualTo(kept);
    assertThat(there.subList(kept.size(), there.size())).isSubsetOf(refused);
  }

  private static List<String> keys(int count) {
    return IntStream.range(0, count).mapToObj(i -> "k-" + i).toList();
  }

  /** The keys of a store's readings, which all are as typed; the store is whole. */
  static List<String> readings(Path file) throws Exception {
    List<Reading> all;
    try (Store store = Store.open(file.toString(), new Ticking())) {
      all = store.benches().readings(TRIAL);
    }
    try (Connection raw = Engine.SQLITE.raw(file.toString());
        ResultSet found = raw.createStatement().executeQuery("PRAGMA integrity_check")) {
      assertThat(found.getString(1)).isEqualTo("ok");
    }
    List<TypedReading> typed =
        IntStream.range(0, all.size())
            .mapToObj(i -> reading("k-" + i, "45", Integer.toString(i)))
            .toList();
    assertThat(all).extracting(Reading::typed).isEqualTo(typed);
    assertThat(all)
        .extracting(Reading::position)
        .isEqualTo(IntStream.rangeClosed(1, all.size()).boxed().toList());
    return typed.stream().map(TypedReading::key).toList();
  }
}
