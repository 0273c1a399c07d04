package rundlauf.usecase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rundlauf.files.TypedDocuments;
import rundlauf.maths.Stopped;
import rundlauf.maths.Work;
import rundlauf.store.Store;

/** Planning tells how far it is, ends when it is no longer wanted, and can be begun anew. */
class PlanningStoppedTest {
  private static final String BENCH = "Invented";

  @TempDir Path folder;
  private final List<Optional<Progress>> told = new ArrayList<>();
  private Consumer<KeptResults> atEachStep = results -> {};
  private Store store;
  private KeptResults results;

  /** One part after the other; looks at the results' progress after each. */
  private final class Listening implements Work {
    @Override
    public <T, R> List<R> map(List<T> items, Function<? super T, ? extends R> f) {
      return Work.sequential().map(items, f);
    }

    @Override
    public void step(int done, int of) {
      told.add(results.planning(BENCH));
      atEachStep.accept(results);
    }

    @Override
    public void check() {
      // stopped by nobody else
    }
  }

  @BeforeEach
  void open() {
    store = Store.open(folder.resolve("store.db").toString(), InstantSource.system());
    var documents = new TypedDocuments();
    store
        .benches()
        .keepBench(
            BENCH,
            """
            bench: Invented
            spindles:
              - {name: Robin, drive: universal}
            holders:
              - {name: jaws, kind: chuck}
            cutters:
              - {name: 1 mm two-flute, kind: end-mill, diameter: 1 mm, flutes: 2}
            setups:
              - {name: one, spindle: Robin, holder: jaws, cutter: 1 mm two-flute, stickout: 18 mm}
              - {name: other, spindle: Robin, holder: jaws, cutter: 1 mm two-flute, stickout: 9 mm}
            jobs:
              - {name: slot, material: {name: brass}, feature: slot, width: 1 mm, depth: 1 mm}
              - {name: deeper, material: {name: brass}, feature: slot, width: 1 mm, depth: 2 mm}
            """);
    var stored = new StoredBench(store.benches(), store.attachments(), documents);
    results = new KeptResults(stored, documents, new Listening());
  }

  @AfterEach
  void close() {
    store.close();
  }

  @Test
  void tellsEveryPairOfJobAndSetup() {
    assertThat(results.planning(BENCH)).isEmpty();
    assertThat(results.plans(BENCH)).hasSize(2);
    assertThat(told)
        .containsExactly(
            Optional.of(new Progress(1, 4)),
            Optional.of(new Progress(2, 4)),
            Optional.of(new Progress(3, 4)),
            Optional.of(new Progress(4, 4)));
    assertThat(results.planning(BENCH)).isEmpty();
  }

  @Test
  void endsWhenItIsStoppedAndBeginsAnew() {
    atEachStep = now -> now.stopPlanning(BENCH);
    assertThatThrownBy(() -> results.plans(BENCH)).isInstanceOf(Stopped.class);
    assertThat(told).containsExactly(Optional.of(new Progress(1, 4)));
    assertThat(results.planning(BENCH)).isEmpty();
    atEachStep = now -> {};
    assertThat(results.plans(BENCH)).hasSize(2);
    assertThat(told).hasSize(5);
  }

  @Test
  void endsWithTheWorkbook() {
    atEachStep = KeptResults::stop;
    assertThatThrownBy(() -> results.plans(BENCH)).isInstanceOf(Stopped.class);
  }
}
