package rundlauf.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.sqlite.SQLiteConfig.SynchronousMode;
import rundlauf.store.WrittenCalls.Call;
import rundlauf.store.WrittenCalls.Flush;
import rundlauf.store.WrittenCalls.Said;

/**
 * The power goes, on a disk that keeps what was flushed and of the rest what chance wills: the
 * store opens whole, with every acknowledged reading. Every call on the store's files was taken
 * down, and is done again on fresh ones up to where the power goes.
 */
class LostPowerTest {
  private static final int READINGS = 10;

  @TempDir private Path folder;
  private int images;

  @Test
  void everyAcknowledgedReadingIsThere() throws Exception {
    assertThat(lost(SynchronousMode.FULL, 12)).isEmpty();
    assertThat(images).isGreaterThan(40);
  }

  @Test
  @Tag("long")
  void everyAcknowledgedReadingIsThereWhereverThePowerGoes() throws Exception {
    assertThat(lost(SynchronousMode.FULL, 1)).isEmpty();
    System.out.printf("power lost %d times%n", images);
  }

  @Test
  void withoutWaitingForTheDiskThisTestWouldFail() throws Exception {
    assertThat(lost(SynchronousMode.NORMAL, 1000)).isNotEmpty();
  }

  /**
   * Where the power goes: after each acknowledgement, and after a share of the other calls; there
   * with nothing of what was not flushed, with half of it, and with nearly all.
   *
   * @param every one in so many of the other calls
   * @return acknowledged readings that were not there
   */
  private List<String> lost(SynchronousMode synchronous, int every) throws Exception {
    var draws = new SplittableRandom(20261130);
    var disk = new LostPower();
    List<String> acknowledged = new ArrayList<>();
    List<String> lost = new ArrayList<>();
    boolean made = false;
    for (Call call : WrittenCalls.of(synchronous, READINGS, folder)) {
      disk.after(call);
      made |= call instanceof Flush flush && flush.file().equals("bench.db");
      if (call instanceof Said said) {
        acknowledged.add(said.key());
      }
      if (made && (call instanceof Said || draws.nextInt(every) == 0)) {
        for (double share : disk.waiting() == 0 ? new double[] {0} : new double[] {0, 0.5, 0.95}) {
          lost.addAll(missing(disk, share, draws, acknowledged));
        }
      }
    }
    assertThat(acknowledged).hasSize(READINGS);
    return lost;
  }

  private List<String> missing(
      LostPower disk, double share, SplittableRandom draws, List<String> acknowledged)
      throws Exception {
    Path image = Files.createDirectory(folder.resolve("image-" + images++));
    disk.lay(image, share, draws);
    List<String> there = FaultyDiskTest.readings(image.resolve("bench.db"));
    // besides what was acknowledged, at most the one under way
    assertThat(there.size()).isLessThanOrEqualTo(acknowledged.size() + 1);
    return acknowledged.stream().filter(key -> !there.contains(key)).toList();
  }
}
