package rundlauf.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rundlauf.files.DemoBenchFiles;
import rundlauf.files.TypedDocuments;
import rundlauf.maths.Work;
import rundlauf.reduce.Reduced;
import rundlauf.render.Sentences;
import rundlauf.store.Store;
import rundlauf.wire.ResultDocument;

/** The figures of a trial are worked out once for all that they depend on, and anew for more. */
class TrialDocumentTest {
  /** A cache that can be looked into. */
  private static final class Shelved implements FigureCache {
    private final Map<String, String> documents = new LinkedHashMap<>();
    private final List<FigureKey> asked = new ArrayList<>();

    @Override
    public Optional<String> find(FigureKey key) {
      asked.add(key);
      return Optional.ofNullable(documents.get(key.digest()));
    }

    @Override
    public void keep(FigureKey key, String document) {
      documents.putIfAbsent(key.digest(), document);
    }
  }

  @TempDir Path folder;
  private final Shelved cache = new Shelved();
  private final List<Reduced> written = new ArrayList<>();
  private Store store;
  private TrialName speed;

  @BeforeEach
  void keep() {
    store = Store.open(folder.resolve("store.db").toString(), InstantSource.system());
    String bench =
        new KeepContents(store.benches(), store.attachments(), new TypedDocuments())
            .keep(DemoBenchFiles.contents())
            .bench();
    speed = new TrialName(bench, "heron-speed.yaml");
  }

  @AfterEach
  void close() {
    store.close();
  }

  private TrialDocument document(String version) {
    var stored = new StoredBench(store.benches(), store.attachments(), new TypedDocuments());
    var results = new KeptResults(stored, new TypedDocuments(), Work.sequential());
    return new TrialDocument(stored, results, cache, this::write, version);
  }

  private String write(Reduced reduced) {
    written.add(reduced);
    return ResultDocument.of(reduced, Sentences::text);
  }

  @Test
  void theSameTrialIsReducedOnceWhoeverAsks() {
    String first = document("1").of(speed);
    String second = document("1").of(speed);
    assertThat(second).isEqualTo(first);
    assertThat(written).hasSize(1);
    assertThat(cache.documents.values()).containsExactly(first);
    assertThat(cache.asked.get(1).digest()).isEqualTo(cache.asked.get(0).digest());
  }

  @Test
  void anotherReadingGivesAnotherKeyAndAStrikeAThird() {
    String first = document("1").of(speed);
    TypedReading more = another(store.benches().readings(speed));
    store.benches().append(speed, more);
    String second = document("1").of(speed);
    store.benches().strike(speed, more.key(), "misread");
    String third = document("1").of(speed);
    assertThat(cache.asked.stream().map(FigureKey::digest).distinct()).hasSize(3);
    assertThat(written).hasSize(3);
    assertThat(second).isNotEqualTo(first);
    assertThat(third).isEqualTo(first);
  }

  @Test
  void anotherVersionOfTheMethodsGivesAnotherKey() {
    document("1").of(speed);
    document("2").of(speed);
    assertThat(cache.documents).hasSize(2);
    assertThat(written).hasSize(2);
  }

  @Test
  void whatIsKeptIsGivenWithoutReducing() {
    document("1").of(speed);
    String key = cache.asked.get(0).digest();
    cache.documents.put(key, "{\"kept\":true}");
    assertThat(document("1").of(speed)).isEqualTo("{\"kept\":true}");
  }

  /** The last reading once more, at a speed of its own. */
  private static TypedReading another(List<Kept.Reading> readings) {
    TypedReading last = readings.get(readings.size() - 1).typed();
    List<TypedReading.Cell> cells =
        last.cells().stream().map(c -> c.column().startsWith("speed") ? faster(c) : c).toList();
    return new TypedReading("one-more", cells);
  }

  private static TypedReading.Cell faster(TypedReading.Cell cell) {
    int speed = Integer.parseInt(cell.text().strip()) + 100;
    return new TypedReading.Cell(cell.column(), Integer.toString(speed));
  }
}
