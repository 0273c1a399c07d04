package rundlauf.usecase;

import java.util.List;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;

/** Takes an older edition of a bench's document back, as a new one. */
public final class RestoreEdition {
  private final BenchStore benches;
  private final BenchDocument document;

  public RestoreEdition(BenchStore benches, StoredBench stored, Documents documents) {
    this.benches = benches;
    this.document = new BenchDocument(benches, stored, documents);
  }

  /**
   * Keeps the text of an older edition once more.
   *
   * @throws Refused when there is no such edition, or the bench cannot be read with it
   */
  public Kept.Edition restore(String bench, int number) {
    List<Kept.Edition> editions = benches.benchEditions(bench);
    if (number < 1 || number > editions.size()) {
      throw Refused.at(Place.NOWHERE, "part-not-there");
    }
    return document.keep(bench, editions.get(number - 1).document());
  }
}
