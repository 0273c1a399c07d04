package rundlauf.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rundlauf.Main;
import rundlauf.store.Store;
import rundlauf.usecase.Kept;
import rundlauf.usecase.TrialName;

/** Many sheets at once, and a server that is killed hard: what was acknowledged is there, once. */
class SheetsUnderLoadTest {
  private static final String BENCH = "The inlay corner";
  private static final String HEAD =
      "trial: runout\nindicator: {division: 0.01 mm}\ngauge: {diameter: 3 mm}\n";
  private static final int SHEETS = 20;
  private static final int EACH = 25;

  @TempDir private Path folder;

  @Test
  void twentySheetsLoseNothingAndDoubleNothing() throws Exception {
    try (WorkbookServed workbook = WorkbookServed.empty(folder)) {
      begin(workbook.store(), SHEETS);
      Sender sender = new Sender(workbook.at(""));
      List<Callable<Void>> hands = new ArrayList<>();
      for (int sheet = 1; sheet <= SHEETS; sheet++) {
        int number = sheet;
        hands.add(() -> typed(sender, number));
      }
      ExecutorService all = Executors.newFixedThreadPool(SHEETS);
      for (Future<Void> hand : all.invokeAll(hands)) {
        hand.get();
      }
      all.shutdown();
      for (int sheet = 1; sheet <= SHEETS; sheet++) {
        assertThat(kept(workbook.store(), sheet))
            .extracting(r -> r.typed().key())
            .containsExactlyElementsOf(IntStream.range(0, EACH).mapToObj(i -> "key" + i).toList());
      }
      assertThat(workbook.faults()).isEmpty();
    }
  }

  /** Each reading is sent twice, as after an answer that was lost. */
  private static Void typed(Sender sender, int sheet) throws Exception {
    for (int i = 0; i < EACH; i++) {
      String reading = Integer.toString(10 * (i % 4));
      for (int twice = 0; twice < 2; twice++) {
        var answer =
            sender.reading("/bench/1/trial/" + sheet, "key" + i, Integer.toString(15 * i), reading);
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
        assertThat(answer.body()).isEqualTo("{\"position\":" + (i + 1) + "}");
      }
    }
    return null;
  }

  @Test
  void aServerKilledHardHasEverythingThatItAcknowledged() throws Exception {
    killed(3);
  }

  @Test
  @Tag("long")
  void aServerKilledHardTwoHundredTimes() throws Exception {
    killed(200);
  }

  private void killed(int times) throws Exception {
    String store = folder.resolve("killed.db").toString();
    begin(store, 1);
    var draws = new SplittableRandom(20261125);
    List<String> acknowledged = new ArrayList<>();
    for (int run = 0; run < times; run++) {
      acknowledged.addAll(killedAfter(store, "run" + run, draws.nextInt(1, 30)));
      List<String> kept = kept(store, 1).stream().map(r -> r.typed().key()).toList();
      assertThat(kept).containsAll(acknowledged).doesNotHaveDuplicates();
      // besides what was acknowledged, at most the one under way in each run
      assertThat(kept.size()).isLessThanOrEqualTo(acknowledged.size() + run + 1);
    }
    assertThat(acknowledged.size()).isGreaterThanOrEqualTo(times);
  }

  private static List<String> killedAfter(String store, String prefix, int acknowledgements)
      throws IOException, InterruptedException {
    Process server =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName(),
                "serve",
                "--store",
                store,
                "--port",
                "0")
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    List<String> keys = new ArrayList<>();
    try (BufferedReader said = server.inputReader()) {
      String address = said.readLine().replaceFirst(".*(http://[^ ]+)/ .*", "$1");
      Sender sender = new Sender(address);
      Thread killer = null;
      while (server.isAlive()) {
        String key = prefix + "-" + keys.size();
        if (sender.reading("/bench/1/trial/1", key, "45", "10").statusCode() != 200) {
          throw new IllegalStateException("a reading was refused");
        }
        keys.add(key);
        if (keys.size() == acknowledgements && killer == null) {
          killer = new Thread(server::destroyForcibly); // while the next one is under way
          killer.start();
        }
      }
    } catch (IOException killed) {
      // the connection broke
    } finally {
      server.destroyForcibly().waitFor();
    }
    assertThat(server.exitValue()).isEqualTo(128 + 9);
    return keys;
  }

  private static void begin(String address, int sheets) {
    try (Store store = Store.open(address, InstantSource.system())) {
      store.benches().keepBench(BENCH, "bench: " + BENCH + "\n");
      for (int sheet = 1; sheet <= sheets; sheet++) {
        store.benches().keepTrial(trial(sheet), HEAD);
      }
    }
  }

  private static TrialName trial(int sheet) {
    return new TrialName(BENCH, "sheet-" + sheet + ".yaml");
  }

  private static List<Kept.Reading> kept(String address, int sheet) {
    try (Store store = Store.open(address, InstantSource.system())) {
      return store.benches().readings(trial(sheet));
    }
  }
}
