package rundlauf.usecase;

import java.util.List;
import rundlauf.bench.Entry;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;

/** Takes an older edition of a bench's document back, as a new one. */
public final class RestoreEdition {
  private final BenchStore benches;
  private final BenchDocument document;
  private final Documents documents;
  private final PartUses uses;

  public RestoreEdition(BenchStore benches, StoredBench stored, Documents documents) {
    this.benches = benches;
    this.document = new BenchDocument(benches, stored, documents);
    this.documents = documents;
    this.uses = new PartUses(stored, documents);
  }

  /**
   * Keeps the text of an older edition once more.
   *
   * @throws Refused when there is no such edition, the bench cannot be read with it, or a trial
   *     names what it does not have
   */
  public Kept.Edition restore(String bench, int number) {
    List<Kept.Edition> editions = benches.benchEditions(bench);
    if (number < 1 || number > editions.size()) {
      throw Refused.at(Place.NOWHERE, "part-not-there");
    }
    String then = editions.get(number - 1).document();
    String now = editions.get(editions.size() - 1).document();
    uses.refuseGone(bench, read(now), read(then));
    return document.keep(bench, then);
  }

  private Entry.Fields read(String text) {
    return documents.read(text, BenchContents.DOCUMENT);
  }
}
