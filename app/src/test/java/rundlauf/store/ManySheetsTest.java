package rundlauf.store;

import static org.assertj.core.api.Assertions.assertThat;
import static rundlauf.store.Invented.TRIAL;
import static rundlauf.store.Invented.reading;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rundlauf.usecase.BenchStore;
import rundlauf.usecase.Kept.Reading;
import rundlauf.usecase.TrialName;

/**
 * Twenty sheets at a time, every reading sent twice: none lost, none doubled, each in its order.
 */
class ManySheetsTest {
  private static final int SHEETS = 20;
  private static final int READINGS = 25;

  @TempDir private Path folder;

  @ParameterizedTest
  @EnumSource(Engine.class)
  void intoOneTrial(Engine engine) throws Exception {
    try (Store store = Store.open(engine.fresh(folder), new Ticking())) {
      Invented.begin(store.benches());
      List<Reading> acknowledged = sent(store.benches(), sheet -> TRIAL);
      List<Reading> kept = store.benches().readings(TRIAL);
      assertThat(kept).containsExactlyInAnyOrderElementsOf(acknowledged);
      assertThat(kept)
          .extracting(Reading::position)
          .containsExactlyElementsOf(IntStream.rangeClosed(1, SHEETS * READINGS).boxed().toList());
      for (int sheet = 0; sheet < SHEETS; sheet++) {
        assertThat(keysOf(kept, sheet)).containsExactlyElementsOf(keys(sheet));
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Engine.class)
  void eachIntoItsOwn(Engine engine) throws Exception {
    try (Store store = Store.open(engine.fresh(folder), new Ticking())) {
      Invented.begin(store.benches());
      List<Reading> acknowledged =
          sent(
              store.benches(),
              sheet -> {
                var own = new TrialName(TRIAL.bench(), "sheet-" + sheet + ".yaml");
                store.benches().keepTrial(own, "trial: runout\n");
                return own;
              });
      assertThat(acknowledged).hasSize(SHEETS * READINGS);
      for (int sheet = 0; sheet < SHEETS; sheet++) {
        var own = new TrialName(TRIAL.bench(), "sheet-" + sheet + ".yaml");
        assertThat(store.benches().readings(own))
            .extracting(r -> r.typed().key())
            .containsExactlyElementsOf(keys(sheet));
      }
    }
  }

  /** Which trial a sheet fills in. */
  private interface Filled {
    TrialName by(int sheet);
  }

  private static List<Reading> sent(BenchStore store, Filled trial) throws Exception {
    ExecutorService sheets = Executors.newFixedThreadPool(SHEETS);
    try {
      List<Callable<List<Reading>>> tasks = new ArrayList<>();
      for (int sheet = 0; sheet < SHEETS; sheet++) {
        int one = sheet;
        tasks.add(() -> send(store, trial.by(one), one));
      }
      List<Reading> all = new ArrayList<>();
      for (Future<List<Reading>> done : sheets.invokeAll(tasks)) {
        all.addAll(done.get());
      }
      return all;
    } finally {
      sheets.shutdownNow();
    }
  }

  private static List<Reading> send(BenchStore store, TrialName trial, int sheet) {
    List<Reading> answers = new ArrayList<>();
    for (String key : keys(sheet)) {
      Reading answer = store.append(trial, reading(key, "45", key));
      assertThat(store.append(trial, reading(key, "45", key))).isEqualTo(answer);
      answers.add(answer);
    }
    return answers;
  }

  private static List<String> keys(int sheet) {
    return IntStream.range(0, READINGS).mapToObj(i -> sheet + "/" + i).toList();
  }

  private static List<String> keysOf(List<Reading> kept, int sheet) {
    return kept.stream().map(r -> r.typed().key()).filter(k -> k.startsWith(sheet + "/")).toList();
  }
}
