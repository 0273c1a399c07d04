package rundlauf.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rundlauf.files.TypedDocuments;
import rundlauf.usecase.BenchContents;
import rundlauf.usecase.KeepContents;
import rundlauf.usecase.StoredBench;
import rundlauf.usecase.TrialName;
import rundlauf.usecase.TypedReading;

/** A bench taken out of a store and into another is taken out of that the same, byte for byte. */
class PackedStoreTest {
  private static final TypedDocuments DOCUMENTS = new TypedDocuments();
  private static final int BENCHES = 12;

  /** What people type: marks, quotes, commas, signs, other scripts. */
  private static final List<String> TEXTS =
      List.of(
          "12",
          "-3.5",
          "+0,25",
          "1/8",
          "loose; see photo",
          "\"quoted\"",
          "half\"quote",
          "äöüß µm °",
          "дрожит",
          "触れた",
          "🪵 ebony",
          "a, b, c",
          "# not a comment",
          "yes",
          "no",
          "null",
          "'");

  @TempDir private Path folder;

  @ParameterizedTest
  @EnumSource(Engine.class)
  void isTheSameByteForByte(Engine engine) throws Exception {
    for (int seed = 1; seed <= BENCHES; seed++) {
      String bench = "The inlay corner " + seed;
      Path own = Files.createDirectories(folder.resolve(engine + "-" + seed));
      Path other = Files.createDirectories(own.resolve("other"));
      BenchContents first;
      try (Store store = Store.open(engine.fresh(own), new Ticking())) {
        make(store, bench, new SplittableRandom(seed));
        first = contents(store, bench);
      }
      try (Store store = Store.open(engine.fresh(other), new Ticking())) {
        keep(store).keep(first);
        assertThat(contents(store, bench)).isEqualTo(first);
        keep(store).keep(first); // once more changes nothing
        assertThat(contents(store, bench)).isEqualTo(first);
      }
    }
  }

  private static KeepContents keep(Store store) {
    return new KeepContents(store.benches(), store.attachments(), DOCUMENTS);
  }

  private static BenchContents contents(Store store, String bench) {
    return new StoredBench(store.benches(), store.attachments(), DOCUMENTS).contents(bench);
  }

  private static void make(Store store, String bench, SplittableRandom random) {
    store.benches().keepBench(bench, "bench: " + bench + "\nnotes: made up # a comment\n");
    int trials = random.nextInt(1, 4);
    for (int i = 0; i < trials; i++) {
      TrialName trial = new TrialName(bench, (i == 1 ? "old/" : "") + "trial-" + i + ".yaml");
      boolean photo = random.nextBoolean();
      String photos = photo ? "photos:\n  - \"photo-" + i + ".jpg\"\n" : "";
      store.benches().keepTrial(trial, "trial: \"inspection\"\n" + photos);
      if (photo) {
        byte[] content = new byte[random.nextInt(1, 2000)];
        random.nextBytes(content);
        store.attachments().attach(trial, "photo-" + i + ".jpg", content);
      }
      rows(store, trial, random);
    }
  }

  private static void rows(Store store, TrialName trial, SplittableRandom random) {
    int rows = random.nextInt(0, 9);
    for (int row = 0; row < rows; row++) {
      String key = "k" + row + "-" + Long.toHexString(random.nextLong());
      List<TypedReading.Cell> cells = new ArrayList<>();
      for (String column : List.of("item", "state", "value", "note")) {
        if (cells.isEmpty() || random.nextInt(3) > 0) {
          String text = TEXTS.get(random.nextInt(TEXTS.size()));
          cells.add(new TypedReading.Cell(column, text));
        }
      }
      store.benches().append(trial, new TypedReading(key, cells));
      if (random.nextInt(3) == 0) {
        store.benches().strike(trial, key, TEXTS.get(random.nextInt(4, TEXTS.size())));
      }
    }
  }
}
