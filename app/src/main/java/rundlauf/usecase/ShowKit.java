package rundlauf.usecase;

import java.util.List;
import rundlauf.bench.Bench;
import rundlauf.bench.Entry;

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
  public record Kit(Bench bench, Entry.Fields document, List<Kept.Edition> editions) {
    public Kit {
      editions = List.copyOf(editions);
    }

    /** The number of the newest edition. */
    public int edition() {
      return editions.get(editions.size() - 1).number();
    }

    /** The parts of a section as they were typed. */
    public List<Entry> parts(String section) {
      return BenchDocument.parts(document, section);
    }
  }

  /** The newest edition, and those before it. */
  public Kit show(String bench) {
    List<Kept.Edition> editions = benches.benchEditions(bench);
    String newest = editions.get(editions.size() - 1).document();
    return new Kit(results.bench(bench), documents.read(newest, BenchContents.DOCUMENT), editions);
  }
}
