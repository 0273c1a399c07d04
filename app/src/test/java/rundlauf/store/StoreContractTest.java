package rundlauf.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.groups.Tuple.tuple;
import static rundlauf.store.Invented.TRIAL;
import static rundlauf.store.Invented.reading;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;
import rundlauf.quantity.Refused;
import rundlauf.render.Sentences;
import rundlauf.usecase.AttachmentStore;
import rundlauf.usecase.BenchStore;
import rundlauf.usecase.FigureKey;
import rundlauf.usecase.Kept.Edition;
import rundlauf.usecase.Kept.Reading;
import rundlauf.usecase.TrialName;
import rundlauf.usecase.TypedReading;
import rundlauf.usecase.TypedReading.Cell;

/** What a store does, on each database alike. */
@ParameterizedClass
@EnumSource(Engine.class)
class StoreContractTest {
  private final Engine engine;
  @TempDir private Path folder;
  private String address;
  private Store store;
  private BenchStore benches;

  StoreContractTest(Engine engine) {
    this.engine = engine;
  }

  @BeforeEach
  void open() {
    address = engine.fresh(folder);
    store = Store.open(address, new Ticking());
    benches = store.benches();
  }

  @AfterEach
  void close() {
    store.close();
  }

  private void reopen() {
    store.close();
    store = Store.open(address, new Ticking());
    benches = store.benches();
  }

  private static String said(ThrowingCallable call) {
    return Sentences.refusal(catchThrowableOfType(Refused.class, call)).text();
  }

  @Test
  void aNewStoreIsEmpty() {
    assertThat(benches.benches()).isEmpty();
    assertThat(benches.bench("none")).isEmpty();
    assertThat(benches.trials("none")).isEmpty();
    assertThat(benches.editions(TRIAL)).isEmpty();
    assertThat(benches.readings(TRIAL)).isEmpty();
    assertThat(store.attachments().attachments(TRIAL)).isEmpty();
  }

  @Test
  void documentsComeBackAsTheyWereTyped() {
    String typed = "bench: The inlay corner  # µ, ‰, \uD83C\uDFBB\r\n\tjobs: ['']\n\n";
    benches.keepBench("b", typed);
    benches.keepBench("a", "");
    benches.keepTrial(new TrialName("b", "z.yaml"), typed);
    benches.keepTrial(new TrialName("b", "a.yaml"), "x");
    reopen();
    assertThat(benches.benches()).containsExactly("b", "a");
    assertThat(benches.bench("b").map(Edition::document)).contains(typed);
    assertThat(benches.bench("a").map(Edition::document)).contains("");
    assertThat(benches.trials("b")).containsExactly("z.yaml", "a.yaml");
    assertThat(benches.editions(new TrialName("b", "z.yaml")))
        .extracting(Edition::document)
        .containsExactly(typed);
  }

  @Test
  void aChangedDocumentIsANewEditionAndTheOldOneStays() {
    Invented.begin(benches);
    Edition second = benches.keepTrial(TRIAL, "trial: runout\nnotes: warm\n");
    assertThat(benches.keepTrial(TRIAL, "trial: runout\nnotes: warm\n")).isEqualTo(second);
    Edition third = benches.keepTrial(TRIAL, "trial: runout\n");
    assertThat(benches.editions(TRIAL))
        .extracting(Edition::number, Edition::document)
        .containsExactly(
            tuple(1, "trial: runout\n"),
            tuple(2, "trial: runout\nnotes: warm\n"),
            tuple(3, "trial: runout\n"));
    assertThat(third.number()).isEqualTo(3);
    benches.keepBench(TRIAL.bench(), "bench: changed\n");
    assertThat(benches.bench(TRIAL.bench()))
        .hasValueSatisfying(
            newest -> {
              assertThat(newest.number()).isEqualTo(2);
              assertThat(newest.document()).isEqualTo("bench: changed\n");
            });
  }

  @Test
  void readingsKeepTheirOrderTheirCellsAndTheirTime() {
    Invented.begin(benches);
    var wide =
        new TypedReading(
            "k3",
            List.of(new Cell("reading_mm", "0,01"), new Cell("id", ""), new Cell("a", " x ")));
    Reading first = benches.append(TRIAL, reading("k1", "0", "10"));
    benches.append(TRIAL, reading("k2", "45", "1e1"));
    benches.append(TRIAL, wide);
    List<Reading> before = benches.readings(TRIAL);
    reopen();
    assertThat(benches.readings(TRIAL)).isEqualTo(before);
    assertThat(before).extracting(Reading::position).containsExactly(1, 2, 3);
    assertThat(before.get(0)).isEqualTo(first);
    assertThat(before.get(2).typed()).isEqualTo(wide);
    assertThat(first.at()).isAfter(Instant.ofEpochSecond(1_700_000_000));
    assertThat(before.get(1).at()).isAfter(first.at());
  }

  @Test
  void theSameKeyTwiceIsOneReading() {
    Invented.begin(benches);
    Reading first = benches.append(TRIAL, reading("k1", "0", "10"));
    assertThat(benches.append(TRIAL, reading("k1", "0", "10"))).isEqualTo(first);
    assertThat(said(() -> benches.append(TRIAL, reading("k1", "0", "11"))))
        .isEqualTo("another reading, the one at position 1, has the key \"k1\"");
    assertThat(benches.readings(TRIAL)).containsExactly(first);
    TrialName other = new TrialName(TRIAL.bench(), "other.yaml");
    benches.keepTrial(other, "trial: runout\n");
    assertThat(benches.append(other, reading("k1", "0", "11")).position()).isEqualTo(1);
  }

  @Test
  void aStruckReadingStaysWithReasonAndTime() {
    Invented.begin(benches);
    benches.append(TRIAL, reading("k1", "0", "10"));
    benches.append(TRIAL, reading("k2", "45", "30"));
    var strike = benches.strike(TRIAL, "k1", "touched the dial");
    assertThat(benches.strike(TRIAL, "k1", "touched the dial")).isEqualTo(strike);
    assertThat(said(() -> benches.strike(TRIAL, "k1", "other")))
        .isEqualTo("the reading is struck out already, for \"touched the dial\"");
    assertThat(said(() -> benches.strike(TRIAL, "k9", "none")))
        .isEqualTo("the trial has no reading with the key \"k9\"");
    reopen();
    assertThat(benches.readings(TRIAL))
        .extracting(Reading::struck)
        .containsExactly(Optional.of(strike), Optional.empty());
    assertThat(benches.readings(TRIAL).get(0).typed()).isEqualTo(reading("k1", "0", "10"));
    assertThat(benches.append(TRIAL, reading("k1", "0", "10")).struck()).contains(strike);
  }

  @Test
  void whatIsMissingIsNamed() {
    assertThat(said(() -> benches.keepTrial(TRIAL, "x")))
        .isEqualTo("the store has no bench \"The inlay corner\"");
    benches.keepBench(TRIAL.bench(), "x");
    assertThat(said(() -> benches.append(TRIAL, reading("k", "0", "1"))))
        .isEqualTo("the store has no trial \"heron-er11.yaml\" of the bench \"The inlay corner\"");
    assertThat(said(() -> store.attachments().content("00")))
        .isEqualTo("the store has no file with the digest 00");
  }

  @Test
  void whatCannotBeGivenBackIsRefusedAndNothingOfItIsKept() {
    Invented.begin(benches);
    assertThat(said(() -> benches.append(TRIAL, reading("k", "0\0", "1"))))
        .isEqualTo("the text holds characters that no store can give back: NUL or half of a pair");
    assertThat(said(() -> benches.append(TRIAL, reading("k", "0", "\uD83C"))))
        .startsWith("the text holds characters");
    assertThat(said(() -> benches.append(TRIAL, reading(" ", "0", "1"))))
        .isEqualTo("nothing stands here");
    assertThat(said(() -> benches.append(TRIAL, reading("k", "9".repeat(4001), "1"))))
        .isEqualTo("the text has more than 4000 characters");
    assertThat(said(() -> benches.append(TRIAL, new TypedReading("k", List.of()))))
        .isEqualTo("the reading has 0 cells, and 1 to 40 are kept");
    var twice = new TypedReading("k", List.of(new Cell("a", "1"), new Cell("a", "2")));
    assertThat(said(() -> benches.append(TRIAL, twice)))
        .isEqualTo("the reading has two cells in this column");
    assertThat(benches.readings(TRIAL)).isEmpty();
  }

  @Test
  void filesAreKeptByTheirDigestUpToALimit() throws SQLException {
    Invented.begin(benches);
    AttachmentStore files = store.attachments();
    byte[] abc = "abc".getBytes(StandardCharsets.US_ASCII);
    var kept = files.attach(TRIAL, "tap.wav", abc);
    // source: FIPS 180-4 examples (NIST, SHA256.pdf), one-block message "abc"
    assertThat(kept.digest())
        .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    assertThat(files.attach(TRIAL, "tap.wav", abc)).isEqualTo(kept);
    files.attach(TRIAL, "photo.jpg", new byte[0]);
    files.attach(TRIAL, "again.wav", abc);
    assertThat(said(() -> files.attach(TRIAL, "tap.wav", new byte[] {1})))
        .isEqualTo("the trial has another file of the name \"tap.wav\"");
    assertThat(said(() -> files.attach(TRIAL, "b.wav", new byte[AttachmentStore.MOST_BYTES + 1])))
        .isEqualTo("the file has more than 64000000 bytes");
    reopen();
    assertThat(store.attachments().attachments(TRIAL))
        .extracting("name", "size")
        .containsExactly(tuple("tap.wav", 3L), tuple("photo.jpg", 0L), tuple("again.wav", 3L));
    assertThat(store.attachments().content(kept.digest())).isEqualTo(abc);
    try (Connection raw = engine.raw(address);
        var count = raw.createStatement().executeQuery("SELECT count(*) FROM content")) {
      count.next();
      assertThat(count.getInt(1)).isEqualTo(2);
    }
  }

  @Test
  void aDamagedFileIsNotGivenOut() throws SQLException {
    Invented.begin(benches);
    String digest = "00".repeat(32);
    try (Connection raw = engine.raw(address)) {
      try (var insert = raw.prepareStatement("INSERT INTO content (digest, bytes) VALUES (?, ?)")) {
        insert.setString(1, digest);
        insert.setBytes(2, new byte[] {1});
        insert.execute();
      }
    }
    assertThat(said(() -> store.attachments().content(digest))).endsWith("no longer what was kept");
  }

  @Test
  void figuresAreFoundByAllThatTheyAreAFunctionOf() {
    var key = new FigureKey("trial", "level 0.95", 7, "runout", "3");
    store.figures().keep(key, "{\"tir\": 1}");
    store.figures().keep(key, "{\"tir\": 2}");
    reopen();
    assertThat(store.figures().find(key)).contains("{\"tir\": 1}");
    List.of(
            new FigureKey("trial2", "level 0.95", 7, "runout", "3"),
            new FigureKey("trial", "level 0.9", 7, "runout", "3"),
            new FigureKey("trial", "level 0.95", 8, "runout", "3"),
            new FigureKey("trial", "level 0.95", 7, "speed", "3"),
            new FigureKey("trial", "level 0.95", 7, "runout", "4"),
            new FigureKey("triallevel ", "0.95", 7, "runout", "3"))
        .forEach(other -> assertThat(store.figures().find(other)).as("%s", other).isEmpty());
  }

  @Test
  void nothingThatWasTypedCanBeChangedOrTakenAway() throws SQLException {
    Invented.begin(benches);
    benches.append(TRIAL, reading("k1", "0", "10"));
    benches.strike(TRIAL, "k1", "slipped");
    store.attachments().attach(TRIAL, "tap.wav", new byte[] {1});
    List<String> tables =
        List.of(
            "bench=name",
            "bench_edition=document",
            "trial=name",
            "trial_edition=document",
            "reading=key",
            "reading_cell=text",
            "strike=reason",
            "attachment=name",
            "content=digest");
    try (Connection raw = engine.raw(address)) {
      for (String table : tables) {
        String name = table.replaceFirst("=.*", "");
        String column = table.replaceFirst(".*=", "");
        assertRefused(raw, "UPDATE " + name + " SET " + column + " = 'x'", name);
        assertRefused(raw, "DELETE FROM " + name, name);
      }
    }
    assertThat(benches.readings(TRIAL)).hasSize(1);
  }

  private static void assertRefused(Connection raw, String statement, String table)
      throws SQLException {
    try (var tried = raw.createStatement()) {
      assertThatThrownBy(() -> tried.execute(statement))
          .isInstanceOf(SQLException.class)
          .hasMessageContaining("only added to: " + table);
    }
  }
}
