package rundlauf.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rundlauf.bench.Trial;
import rundlauf.files.TypedDocuments;
import rundlauf.maths.Work;
import rundlauf.quantity.Saying;
import rundlauf.readings.TrialKind;
import rundlauf.safety.SafetyItem;
import rundlauf.safety.Standing;
import rundlauf.store.Store;

/** What the inspections in the store say of a spindle. */
class SpindleStandingTest {
  private static final String BENCH = "Invented";
  private static final String DAY = "2026-03-02";

  @TempDir Path folder;
  private final TypedDocuments documents = new TypedDocuments();
  private Store store;
  private StartTrial start;
  private SpindleStanding standing;

  @BeforeEach
  void open() {
    store = Store.open(folder.resolve("store.db").toString(), InstantSource.system());
    var stored = new StoredBench(store.benches(), store.attachments(), documents);
    var results = new KeptResults(stored, documents, Work.sequential());
    start = new StartTrial(store.benches(), stored, documents, results);
    standing = new SpindleStanding(store.benches(), stored, documents, results);
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
            setups:
              - {name: Robin jaws, spindle: Robin, holder: jaws}
            """);
  }

  @AfterEach
  void close() {
    store.close();
  }

  private TrialName inspected(String date, String state) {
    Map<String, String> head = new LinkedHashMap<>(Map.of("setup", "Robin jaws", "date", date));
    TrialName trial = start.start(BENCH, "inspection", head);
    for (SafetyItem item : SafetyItem.of(SafetyItem.Fed.UNKNOWN)) {
      var cells =
          List.of(new TypedReading.Cell("item", item.id()), new TypedReading.Cell("state", state));
      store.benches().append(trial, new TypedReading(item.id(), cells));
    }
    return trial;
  }

  private List<String> said(TrialKind kind) {
    return standing.cautions(BENCH, "Robin jaws", kind).stream().map(Saying::code).toList();
  }

  @Test
  void withoutInspectionOnlyWhatIsPoweredIsCautioned() {
    assertThat(standing.of(BENCH)).containsExactly(Map.entry("Robin", Standing.NOT_INSPECTED));
    assertThat(said(TrialKind.RUNOUT)).isEmpty();
    assertThat(said(TrialKind.SPEED)).containsExactly("spindle-not-inspected");
    assertThat(said(TrialKind.GROWTH)).containsExactly("spindle-not-inspected");
  }

  @Test
  void aFaultHoldsEveryTrialSaveInspections() {
    inspected(DAY, "fault");
    assertThat(said(TrialKind.RUNOUT)).containsExactly("spindle-held");
    assertThat(said(TrialKind.SPEED)).containsExactly("spindle-held");
    assertThat(said(TrialKind.INSPECTION)).isEmpty();
    assertThat(standing.cautions(BENCH, "another", TrialKind.RUNOUT)).isEmpty();
  }

  /** Of one day the one that was begun later, as it would of the exported files. */
  @Test
  void theLastInspectionCounts() {
    for (int i = 0; i < 12; i++) {
      boolean good = i % 2 == 0;
      inspected(DAY, good ? "good" : "fault");
      assertThat(standing.of(BENCH).get("Robin"))
          .as("inspection %d of the day", i + 1)
          .isEqualTo(good ? Standing.INSPECTED : Standing.HELD);
    }
    inspected("2026-03-01", "good");
    assertThat(said(TrialKind.RUNOUT)).containsExactly("spindle-held");
  }

  @Test
  void aStrikeAndAReadingMoreAreSeen() {
    TrialName trial = inspected(DAY, "good");
    assertThat(said(TrialKind.SPEED)).isEmpty();
    String item = SafetyItem.of(SafetyItem.Fed.UNKNOWN).get(0).id();
    store.benches().strike(trial, item, "misread");
    assertThat(said(TrialKind.SPEED)).containsExactly("spindle-held");
  }

  /** A file of a kind that is not reduced yet may lie on the bench: its pages open all the same. */
  @Test
  void aTrialOfAKindThatIsNotReducedYetIsCautionedToo() {
    inspected(DAY, "fault");
    var name = new TrialName(BENCH, "robin-sound.yaml");
    String text = "trial: sound\nsetup: Robin jaws\nrecording: robin.wav\n";
    store.benches().keepTrial(name, text);
    Trial sound =
        documents.trial(
            BenchContents.of(
                Map.of("trials/robin-sound.yaml", text.getBytes(StandardCharsets.UTF_8))),
            "trials/robin-sound.yaml");
    assertThat(standing.ofTrial(BENCH, sound))
        .extracting(Saying::code)
        .containsExactly("spindle-held");
  }
}
