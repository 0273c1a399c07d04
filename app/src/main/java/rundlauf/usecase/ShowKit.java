package rundlauf.usecase;

import java.util.ArrayList;
import java.util.List;
import rundlauf.bench.Bench;
import rundlauf.bench.Entry;
import rundlauf.quantity.Saying;

/** Shows what stands on a bench, as it was typed. */
public final class ShowKit {
  private final BenchStore benches;
  private final Documents documents;
  private final KeptResults results;

  public ShowKit(BenchStore benches, Documents documents, KeptResults results) {
    this.benches = benches;
    this.documents = documents;
    this.results = results;
  }

  /**
   * The bench's document.
   *
   * @param editions the oldest first
   */
  public record Kit(Bench bench, Entry.Fields document, List<Step> editions) {
    public Kit {
      editions = List.copyOf(editions);
    }

    /** The number of the newest edition. */
    public int edition() {
      return editions.get(editions.size() - 1).edition().number();
    }

    /** The parts of a section as they were typed. */
    public List<Entry> parts(String section) {
      return BenchDocument.parts(document, section);
    }
  }

  /** An edition, and what it says otherwise than the one before it; nothing for the first. */
  public record Step(Kept.Edition edition, List<Saying> changes) {
    public Step {
      changes = List.copyOf(changes);
    }
  }

  /** The newest edition, and those before it. */
  public Kit show(String bench) {
    List<Step> steps = new ArrayList<>();
    Entry.Fields document = Entry.Fields.none();
    for (Kept.Edition edition : benches.benchEditions(bench)) {
      Entry.Fields now = documents.read(edition.document(), BenchContents.DOCUMENT);
      steps.add(new Step(edition, steps.isEmpty() ? List.of() : EditionChanges.of(document, now)));
      document = now;
    }
    return new Kit(results.bench(bench), document, steps);
  }
}
