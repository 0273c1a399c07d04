package rundlauf.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rundlauf.bench.Bench;
import rundlauf.files.DemoBenchFiles;
import rundlauf.files.TypedDocuments;
import rundlauf.maths.Draws;
import rundlauf.maths.Work;
import rundlauf.report.Outcome;
import rundlauf.store.Store;

/** A bench taken into a store stands there for the same figures. */
class StoredBenchTest {
  @TempDir Path folder;

  @Test
  void theStoredDemoBenchGivesTheFiguresOfItsFiles() throws Exception {
    BenchContents demo = DemoBenchFiles.contents();
    var documents = new TypedDocuments();
    Bench typed = documents.bench(demo);
    try (Store store =
        Store.open(
            folder.resolve("demo.db").toString(), () -> Instant.parse("2026-11-25T20:00:00Z"))) {
      var benches = store.benches();
      String name = new KeepContents(benches, store.attachments(), documents).keep(demo).bench();
      var stored = new StoredBench(benches, store.attachments(), documents);
      Bench kept = documents.bench(stored.contents(name));
      assertThat(figures(kept)).isEqualTo(figures(typed)).isNotEmpty();
    }
  }

  private static Map<String, String> figures(Bench bench) {
    Map<String, String> figures = new LinkedHashMap<>();
    List<Outcome> outcomes = BenchOutcomes.reduced(bench, Draws.DEFAULT, Work.sequential());
    for (Outcome outcome : outcomes) {
      if (outcome instanceof Outcome.Figures f) {
        f.reduced()
            .figures()
            .forEach(
                (path, figure) -> figures.put(outcome.trial().file() + " " + path, digits(figure)));
      }
    }
    return figures;
  }

  private static String digits(rundlauf.quantity.Figure figure) {
    return figure.estimate().toString();
  }
}
