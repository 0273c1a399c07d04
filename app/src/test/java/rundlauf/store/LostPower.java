package rundlauf.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import rundlauf.store.WrittenCalls.Call;
import rundlauf.store.WrittenCalls.Cut;
import rundlauf.store.WrittenCalls.Flush;
import rundlauf.store.WrittenCalls.Said;
import rundlauf.store.WrittenCalls.Write;

/**
 * What a disk holds when the power goes: whatever was flushed, and of what was not, any part in any
 * order, down to single sectors.
 */
final class LostPower {
  // source: common practice, no source: a disk writes a sector of 512 bytes whole or not at all
  private static final int SECTOR = 512;

  private final Map<String, byte[]> flushed = new LinkedHashMap<>();
  private final List<Call> waiting = new ArrayList<>();

  /** A call went to the system. */
  void after(Call call) {
    if (call instanceof Flush flush) {
      for (Call earlier : List.copyOf(waiting)) {
        if (file(earlier).equals(flush.file())) {
          apply(earlier, flushed);
          waiting.remove(earlier);
        }
      }
    } else if (!(call instanceof Said)) {
      waiting.add(call);
    }
  }

  /** How many calls are not flushed. */
  int waiting() {
    return waiting.size();
  }

  /**
   * Lays down what is on the disk.
   *
   * @param share of the sectors not yet flushed that had gone there by chance, 0 to 1
   */
  void lay(Path folder, double share, SplittableRandom draws) throws IOException {
    Map<String, byte[]> there = new LinkedHashMap<>(flushed);
    for (Call call : waiting) {
      for (Call piece : pieces(call)) {
        if (draws.nextDouble() < share) {
          apply(piece, there);
        }
      }
    }
    for (Map.Entry<String, byte[]> file : there.entrySet()) {
      Files.write(folder.resolve(file.getKey()), file.getValue());
    }
  }

  /** A write in its sectors, each of which may be lost alone. */
  private static List<Call> pieces(Call call) {
    if (!(call instanceof Write write)) {
      return List.of(call);
    }
    List<Call> pieces = new ArrayList<>();
    int from = 0;
    while (from < write.bytes().length) {
      int place = write.offset() + from;
      int to = Math.min(write.bytes().length, from + SECTOR - place % SECTOR);
      pieces.add(new Write(write.file(), place, Arrays.copyOfRange(write.bytes(), from, to)));
      from = to;
    }
    return pieces;
  }

  private static String file(Call call) {
    return call instanceof Write write ? write.file() : ((Cut) call).file();
  }

  private static void apply(Call call, Map<String, byte[]> files) {
    byte[] before = files.getOrDefault(file(call), new byte[0]);
    if (call instanceof Write write) {
      int end = write.offset() + write.bytes().length;
      byte[] after = Arrays.copyOf(before, Math.max(before.length, end));
      System.arraycopy(write.bytes(), 0, after, write.offset(), write.bytes().length);
      files.put(write.file(), after);
    } else {
      files.put(file(call), Arrays.copyOf(before, ((Cut) call).length()));
    }
  }
}
