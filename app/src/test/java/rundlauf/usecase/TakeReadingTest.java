package rundlauf.usecase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rundlauf.files.DemoBenchFiles;
import rundlauf.files.TypedDocuments;
import rundlauf.guide.Guidance;
import rundlauf.guide.Step;
import rundlauf.maths.Work;
import rundlauf.quantity.Refused;
import rundlauf.readings.Unfinished;
import rundlauf.report.Outcome;
import rundlauf.safety.Standing;
import rundlauf.store.Store;

/** A trial that tells something still tells it after one reading more, or refuses the reading. */
class TakeReadingTest {
  @TempDir Path folder;
  private final TypedDocuments documents = new TypedDocuments();
  private Store store;
  private String bench;
  private KeptResults results;
  private SpindleStanding standing;
  private ShowSheet sheet;
  private TakeReading take;

  @BeforeEach
  void open() {
    store = Store.open(folder.resolve("store.db").toString(), InstantSource.system());
    BenchStore benches = store.benches();
    bench =
        new KeepContents(benches, store.attachments(), documents)
            .keep(DemoBenchFiles.contents())
            .bench();
    var stored = new StoredBench(benches, store.attachments(), documents);
    results = new KeptResults(stored, documents, Work.sequential());
    standing = new SpindleStanding(benches, stored, documents, results);
    sheet = new ShowSheet(benches, store.attachments(), stored, documents, results, standing);
    take = new TakeReading(benches, stored, InstantSource.system());
  }

  @AfterEach
  void close() {
    store.close();
  }

  private static TypedReading answer(Step step) {
    return new TypedReading("one more", TrialHeads.asked(step).typed().cells());
  }

  @Test
  void whatASheetAsksForNextSpoilsNoTrialOfTheDemo() {
    List<String> all = store.benches().trials(bench);
    assertThat(all).hasSizeGreaterThan(20);
    for (String trial : all) {
      var name = new TrialName(bench, trial);
      assertThat(results.outcome(name)).as(trial).isInstanceOf(Outcome.Figures.class);
      Guidance guidance = sheet.show(name).guidance();
      TypedReading reading = answer(guidance.step().orElse(guidance.more()));
      Optional<Refused> refused = taken(name, reading);
      assertThat(refused.map(r -> r.saying().code()).orElse("inspection-said-twice"))
          .as(trial)
          .isEqualTo("inspection-said-twice");
      Outcome after = results.outcome(name);
      boolean tells =
          after instanceof Outcome.Figures
              || (after instanceof Outcome.Unusable u && Unfinished.is(u.refused()));
      assertThat(tells).as(trial + " after " + reading + " refused: " + refused).isTrue();
    }
  }

  private Optional<Refused> taken(TrialName trial, TypedReading reading) {
    int before = store.benches().readings(trial).size();
    try {
      take.take(trial, reading);
      return Optional.empty();
    } catch (Refused refused) {
      assertThat(store.benches().readings(trial)).as(trial.trial()).hasSize(before);
      return Optional.of(refused);
    }
  }

  @Test
  void anInspectionOfItemsStaysWhatItIsAndGoesOnHolding() {
    var name = new TrialName(bench, "shrike-inspection.yaml");
    Guidance guidance = sheet.show(name).guidance();
    assertThat(guidance.step()).isEmpty();
    assertThat(guidance.done()).isEqualTo(guidance.intended());
    var good =
        new TypedReading(
            "k",
            List.of(
                new TypedReading.Cell("item", "guard"), new TypedReading.Cell("state", "good")));
    Refused refused = catchThrowableOfType(Refused.class, () -> take.take(name, good));
    assertThat(refused.saying().code()).isEqualTo("inspection-said-twice");
    assertThat(standing.of(bench)).containsEntry("Shrike", Standing.HELD);
  }
}
